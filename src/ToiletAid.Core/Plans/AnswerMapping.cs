using System.Collections.Immutable;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Plans;

/// <summary>Answers as the reach and hand computations take them.</summary>
public static class AnswerMapping
{
    private const string Dizzy = "dizzy-when-leaning";

    private static readonly ImmutableArray<(string Part, JointMotion Motion)> Joints =
    [
        ("shoulder-flexion", JointMotion.ShoulderFlexion),
        ("shoulder-extension", JointMotion.ShoulderExtension),
        ("shoulder-abduction", JointMotion.ShoulderAbduction),
        ("internal-rotation", JointMotion.ShoulderInternalRotation),
        ("external-rotation", JointMotion.ShoulderExternalRotation),
        ("elbow-flexion", JointMotion.ElbowFlexion),
        ("trunk-flexion", JointMotion.TrunkFlexion),
        ("side-bend", JointMotion.TrunkSideBend),
        ("trunk-rotation", JointMotion.TrunkRotation),
        ("forearm-pronation", JointMotion.ForearmPronation),
        ("forearm-supination", JointMotion.ForearmSupination),
        ("wrist-flexion", JointMotion.WristFlexion),
        ("wrist-extension", JointMotion.WristExtension),
    ];

    private static readonly ImmutableArray<(string Option, ReachPrecaution Precaution)> Precautions =
    [
        ("hip-flexion-limit", ReachPrecaution.HipFlexionLimit),
        ("no-twisting-or-bending", ReachPrecaution.NoTwistingOrBending),
        ("brittle-bones", ReachPrecaution.NoTwistingOrBending),
        ("sternal", ReachPrecaution.Sternal),
        ("shoulder-surgery", ReachPrecaution.ShoulderSurgery),
        ("no-weight-through-the-hand", ReachPrecaution.NoWeightThroughHand),
    ];

    /// <summary>The person as the reach computation takes them. What is not known stays unknown there and widens its spread.</summary>
    /// <param name="known">Answers as given, nothing assumed.</param>
    public static ReachPerson Reach(Answers known)
    {
        // Who gets dizzy is given no lean, whatever balance was seen.
        bool dizzy = known.Many("precautions") is { } all && all.Contains(Dizzy);
        return new()
        {
            Sex = Words.Find<Sex>(known.Choice("sex")) ?? Sex.Unstated,
            AgeYears = known.Si("age"),
            Stature = Input(known, "stature"),
            Mass = Input(known, "mass"),
            Hand = Words.Find<WorkingHand>(known.Choice("hand")) ?? WorkingHand.Right,
            Behind = Words.Find<LandmarkBehind>(known.Choice("reach-behind")),
            BehindHow = known["reach-behind"]?.How ?? HowObtained.Observed,
            Front = Words.Find<LandmarkFront>(known.Choice("reach-front")),
            FrontHow = known["reach-front"]?.How ?? HowObtained.Observed,
            Lean = dizzy ? Lean.NotAtAll : Words.Find<Lean>(known.Choice("lean")),
            LeanForward = dizzy ? null : Input(known, "lean"),
            Joints = known["joints"]?.Value is AnswerValue.Parts parts ? Measured(parts, known["joints"]!.How) : ImmutableDictionary<JointMotion, ReachInput>.Empty,
            Precautions = known.Many("precautions") is { } some
                ? [.. Precautions.Where(p => some.Contains(p.Option) && !(p.Precaution == ReachPrecaution.ShoulderSurgery && CleaningSide.IsSpared(known))).Select(p => p.Precaution).Distinct()]
                : [],
        };
    }

    /// <summary>True when a precaution can change reach or what the person can hold.</summary>
    /// <param name="precaution">Option of the question on precautions.</param>
    internal static bool IsAboutReach(string precaution) => precaution == Dizzy || Precautions.Any(p => p.Option == precaution);

    /// <summary>The hand as the hand computation takes it.</summary>
    /// <param name="filled">Answers with assumptions where nothing is known.</param>
    /// <exception cref="ArgumentException">Age or cleans a day are neither known nor assumed.</exception>
    public static HandFacts Hand(Answers filled) => new()
    {
        AgeYears = Settled(filled, "age"),
        Sex = Words.Find<Sex>(filled.Choice("sex")) ?? Sex.Unstated,
        BestGrasp = Words.Find<Grasp>(filled.Choice("grasp")) ?? Grasp.WholeHand,
        GraspObtained = filled["grasp"]?.How ?? HowObtained.Reported,
        HandsFree = filled.Choice("hands-free") == "one" ? 1 : 2,
        Dexterity = Words.Find<Dexterity>(filled.Choice("dexterity")) ?? Dexterity.Usual,
        Tremor = Words.Find<Tremor>(filled.Choice("tremor")) ?? Tremor.None,
        GripNewtons = filled.Si("grip"),
        PinchNewtons = filled.Si("pinch"),
        PegSeconds = filled.Si("dexterity"),
        CleansPerDay = Settled(filled, "cleans"),
    };

    /// <summary>A number that is known or assumed, SI.</summary>
    /// <exception cref="ArgumentException">It is neither.</exception>
    internal static double Settled(Answers filled, string question) =>
        filled.Si(question) ?? throw new ArgumentException($"{question} is neither known nor assumed", nameof(filled));

    private static ImmutableDictionary<JointMotion, ReachInput> Measured(AnswerValue.Parts parts, HowObtained? how)
    {
        var unit = Quantities.Units.Find(parts.Unit)!;
        return Joints.Where(j => parts.Amounts.ContainsKey(j.Part))
            .ToImmutableDictionary(j => j.Motion, j => new ReachInput(unit.ToSi(parts.Amounts[j.Part]), how ?? HowObtained.Measured));
    }

    private static ReachInput? Input(Answers known, string question) =>
        known.Si(question) is { } si ? new ReachInput(si, known[question]!.How ?? HowObtained.Reported) : null;
}
