using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>The numbers of the knowledge file as the model reads them, looked up once by id.</summary>
internal sealed class ReachNumbers
{
    private static readonly ImmutableArray<(JointMotion Motion, string Id)> Motions =
    [
        (JointMotion.ShoulderFlexion, "shoulder-flexion"),
        (JointMotion.ShoulderExtension, "shoulder-extension"),
        (JointMotion.ShoulderAbduction, "shoulder-abduction"),
        (JointMotion.ShoulderAdduction, "shoulder-adduction"),
        (JointMotion.ShoulderInternalRotation, "shoulder-internal-rotation"),
        (JointMotion.ShoulderExternalRotation, "shoulder-external-rotation"),
        (JointMotion.ElbowFlexion, "elbow-flexion"),
        (JointMotion.ElbowExtensionLag, "elbow-extension-lag"),
        (JointMotion.TrunkFlexion, "trunk-flexion"),
        (JointMotion.TrunkSideBend, "trunk-side-bend"),
        (JointMotion.TrunkRotation, "trunk-rotation"),
        (JointMotion.ForearmPronation, "forearm-pronation"),
        (JointMotion.ForearmSupination, "forearm-supination"),
        (JointMotion.WristFlexion, "wrist-flexion"),
        (JointMotion.WristExtension, "wrist-extension"),
        (JointMotion.RadialDeviation, "radial-deviation"),
        (JointMotion.UlnarDeviation, "ulnar-deviation"),
    ];

    private static readonly ImmutableArray<(Posture Posture, string Id)> PostureIds =
    [
        (Posture.Seated, "seated"),
        (Posture.SeatedLeaningForward, "seated-leaning-forward"),
        (Posture.HalfStanding, "half-standing"),
        (Posture.Standing, "standing"),
        (Posture.SideLying, "side-lying"),
        (Posture.Reclined, "reclined"),
    ];

    private readonly EvidenceTable _numbers;

    public ReachNumbers(EvidenceTable numbers)
    {
        _numbers = numbers;
        foreach ((JointMotion motion, string id) in Motions)
        {
            AdultRanges[motion] = numbers.Value($"joint.{id}.adult");
            OlderRanges[motion] = numbers.Value($"joint.{id}.older");
        }

        Postures = [.. PostureIds.Select(p => new PostureNumbers(numbers, p.Posture, p.Id))];
    }

    public JointRanges AdultRanges;

    public JointRanges OlderRanges;

    public ImmutableArray<PostureNumbers> Postures { get; }

    /// <summary>A number by id, SI. Not for the hot loop.</summary>
    public double this[string id] => _numbers.Value(id);

    public Sourced Range(string id) => _numbers[id];

    /// <summary>Standard error of a joint angle, rad.</summary>
    public double JointError(JointMotion motion, HowObtained how)
    {
        string joint = motion switch
        {
            <= JointMotion.ShoulderExternalRotation => "shoulder",
            JointMotion.ElbowFlexion or JointMotion.ElbowExtensionLag => "elbow",
            JointMotion.TrunkFlexion or JointMotion.TrunkSideBend or JointMotion.TrunkRotation => "trunk",
            _ => "wrist",
        };
        return this[$"error.{joint}.{Word(how)}"];
    }

    public static string Word(HowObtained how) => how switch
    {
        HowObtained.Measured => "measured",
        HowObtained.Observed => "observed",
        HowObtained.Reported => "reported",
        _ => throw new ArgumentOutOfRangeException(nameof(how), how, "not a way of obtaining an answer"),
    };
}
