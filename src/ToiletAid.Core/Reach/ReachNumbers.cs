using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>The numbers of the knowledge file as the model reads them, SI. All are looked up here, so that one that is missing is missed at once
/// and not in the middle of a computation. What each means and where it comes from stands in the file beside its id.</summary>
internal sealed class ReachNumbers
{
    private readonly double[] _shoulderError;
    private readonly double[] _elbowError;
    private readonly double[] _trunkError;
    private readonly double[] _wristError;
    private readonly double[] _landmarkError;
    private readonly double[] _halfAngles;

    /// <exception cref="KeyNotFoundException">A number is missing.</exception>
    public ReachNumbers(NumberTable numbers)
    {
        foreach (JointMotion motion in Enum.GetValues<JointMotion>())
        {
            AdultRanges[motion] = numbers.Value($"joint.{Words.Of(motion)}.adult");
            OlderRanges[motion] = numbers.Value($"joint.{Words.Of(motion)}.older");
        }

        OlderFrom = numbers.Value("joint.older-from");
        Postures = [.. Enum.GetValues<Posture>().Select(p => new PostureNumbers(numbers, p))];
        Body = new(numbers);
        Landmarks = new(numbers);
        Precautions = new(numbers);
        Input = new(numbers);
        _shoulderError = ByHowObtained(numbers, "shoulder");
        _elbowError = ByHowObtained(numbers, "elbow");
        _trunkError = ByHowObtained(numbers, "trunk");
        _wristError = ByHowObtained(numbers, "wrist");
        _landmarkError = ByHowObtained(numbers, "landmark");
        JointBetweenPeople = numbers.Value("error.joint-between-people");
        JointApart = numbers.Value("joint.apart");
        JointLeastShare = numbers.Value("error.joint-least-share");
        ContradictionErrors = numbers.Value("error.contradiction");
        LeansForward = numbers["lean.forward.yes"];
        LeansNotForward = numbers["lean.forward.no"];
        LeansSideways = numbers["lean.sideways.yes"];
        LeansNotSideways = numbers["lean.sideways.no"];
        _halfAngles = [.. Enum.GetValues<Approach>().Select(a => numbers.Value($"approach.{Words.Of(a)}.half-angle"))];
        SideLeastBend = numbers.Value("approach.side.least-bend");
        FrontPelvisFactor = numbers.Value("approach.front.pelvis-factor");
        UpperArmForwardMost = numbers.Value("solver.upper-arm-forward-most");
        UpperArmSidewaysMost = numbers.Value("solver.upper-arm-sideways-most");
        TargetBehindLowest = numbers.Value("target.behind-lowest-point");
        Stroke = numbers.Value("aid.stroke");
    }

    /// <summary>Usual joint ranges below <see cref="OlderFrom"/>.</summary>
    public JointRanges AdultRanges;

    /// <summary>Usual joint ranges from <see cref="OlderFrom"/> on.</summary>
    public JointRanges OlderRanges;

    /// <summary>Years.</summary>
    public double OlderFrom { get; }

    /// <summary>By <see cref="Posture"/>.</summary>
    public ImmutableArray<PostureNumbers> Postures { get; }

    public BodyNumbers Body { get; }

    public LandmarkNumbers Landmarks { get; }

    public PrecautionNumbers Precautions { get; }

    public InputRanges Input { get; }

    /// <summary>Spread of an unmeasured joint range between people, as a share of it.</summary>
    public double JointBetweenPeople { get; }

    /// <summary>Spread by which extension and internal rotation of a shoulder go apart at one landmark, as a share.</summary>
    public double JointApart { get; }

    /// <summary>Least share of the usual range in a joint that nobody measured.</summary>
    public double JointLeastShare { get; }

    /// <summary>Standard errors by which two answers must differ to contradict each other.</summary>
    public double ContradictionErrors { get; }

    public Sourced LeansForward { get; }

    public Sourced LeansNotForward { get; }

    public Sourced LeansSideways { get; }

    public Sourced LeansNotSideways { get; }

    /// <summary>Least bend away from the working hand by which a buttock is lifted.</summary>
    public double SideLeastBend { get; }

    /// <summary>How much of its usual share of the lean the pelvis takes when the hand goes between the thighs.</summary>
    public double FrontPelvisFactor { get; }

    public double UpperArmForwardMost { get; }

    public double UpperArmSidewaysMost { get; }

    /// <summary>Skin to be cleaned, as an angle of the ellipse behind its lowest point.</summary>
    public double TargetBehindLowest { get; }

    public double Stroke { get; }

    /// <summary>Half of the sector from which an approach comes.</summary>
    public double HalfAngle(Approach approach) => _halfAngles[(int)approach];

    /// <summary>Standard error of a joint angle, rad.</summary>
    public double JointError(JointMotion motion, HowObtained how) => motion switch
    {
        <= JointMotion.ShoulderExternalRotation => _shoulderError[(int)how],
        JointMotion.ElbowFlexion or JointMotion.ElbowExtensionLag => _elbowError[(int)how],
        JointMotion.TrunkFlexion or JointMotion.TrunkSideBend or JointMotion.TrunkRotation => _trunkError[(int)how],
        _ => _wristError[(int)how],
    };

    /// <summary>Error of a landmark test, as a share of full range.</summary>
    public double LandmarkError(HowObtained how) => _landmarkError[(int)how];

    /// <summary>Errors of one kind, by <see cref="HowObtained"/>.</summary>
    internal static double[] ByHowObtained(NumberTable numbers, string kind) =>
        [.. Enum.GetValues<HowObtained>().Select(how => numbers.Value($"error.{kind}.{Words.Of(how)}"))];
}
