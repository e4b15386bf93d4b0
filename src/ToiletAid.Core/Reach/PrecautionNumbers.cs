using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Reach;

/// <summary>Limits that precautions set, rad.</summary>
/// <param name="numbers">Gives them by id.</param>
internal sealed class PrecautionNumbers(NumberTable numbers)
{
    public double HipFlexionLimit { get; } = numbers.Value("precaution.hip-flexion-limit");

    public double HipTwist { get; } = numbers.Value("precaution.hip-twist");

    public double SpineBend { get; } = numbers.Value("precaution.spine-bend");

    public double SternalAbduction { get; } = numbers.Value("precaution.sternal.abduction");

    public double SternalExtension { get; } = numbers.Value("precaution.sternal.extension");

    public double ShoulderSurgeryExtension { get; } = numbers.Value("precaution.shoulder-surgery.extension");

    public double ShoulderSurgeryInternalRotation { get; } = numbers.Value("precaution.shoulder-surgery.internal-rotation");

    public double NoWeightLeanForward { get; } = numbers.Value("precaution.no-weight.lean-forward");

    public double NoWeightLeanSideways { get; } = numbers.Value("precaution.no-weight.lean-sideways");
}
