using System.Collections.Immutable;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Plans;

/// <summary>Answers as the reach and hand computations take them.</summary>
public static class AnswerMapping
{

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

    private static readonly ImmutableArray<(OptionId Option, ReachPrecaution Precaution)> Precautions =
    [
        (OptionIds.PrecautionHipFlexionLimit, ReachPrecaution.HipFlexionLimit),
        (OptionIds.PrecautionNoTwistingOrBending, ReachPrecaution.NoTwistingOrBending),
        (OptionIds.PrecautionBrittleBones, ReachPrecaution.NoTwistingOrBending),
        (OptionIds.PrecautionSternal, ReachPrecaution.Sternal),
        (OptionIds.PrecautionShoulderSurgery, ReachPrecaution.ShoulderSurgery),
        (OptionIds.PrecautionNoWeightThroughTheHand, ReachPrecaution.NoWeightThroughHand),
    ];

    /// <summary>The person as the reach computation takes them. What is not known stays unknown there and widens its spread.</summary>
    /// <param name="known">Answers as given, nothing assumed.</param>
    public static ReachPerson Reach(Answers known)
    {
        // Who gets dizzy is given no lean, whatever balance was seen.
        bool dizzy = known.Has(OptionIds.PrecautionDizzyWhenLeaning);
        return new()
        {
            Sex = known.Choice(QuestionIds.Sex) ?? Sex.Unstated,
            AgeYears = known.Si(QuestionIds.Age),
            Stature = Input(known, QuestionIds.Stature),
            Mass = Input(known, QuestionIds.Mass),
            Hand = known.Choice(QuestionIds.Hand) ?? WorkingHand.Right,
            Behind = known.Choice(QuestionIds.ReachBehind),
            BehindHow = known[QuestionIds.ReachBehind]?.How ?? HowObtained.Observed,
            Front = known.Choice(QuestionIds.ReachFront),
            FrontHow = known[QuestionIds.ReachFront]?.How ?? HowObtained.Observed,
            Lean = dizzy ? Lean.NotAtAll : known.Choice(QuestionIds.Lean),
            LeanForward = dizzy ? null : Input(known, QuestionIds.Lean),
            Joints = known[QuestionIds.Joints]?.Value is AnswerValue.Parts parts ? Measured(parts, known[QuestionIds.Joints]!.How) : ImmutableDictionary<JointMotion, ReachInput>.Empty,
            Precautions = known.Many(QuestionIds.Precautions) is { } some
                ? [.. Precautions.Where(p => some.Contains(p.Option.Text) && !(p.Precaution == ReachPrecaution.ShoulderSurgery && CleaningSide.IsSpared(known))).Select(p => p.Precaution).Distinct()]
                : [],
        };
    }

    /// <summary>True when a precaution can change reach or what the person can hold.</summary>
    /// <param name="precaution">Option of the question on precautions.</param>
    internal static bool IsAboutReach(string precaution) => precaution == OptionIds.PrecautionDizzyWhenLeaning.Text || Precautions.Any(p => p.Option.Text == precaution);

    /// <summary>The hand as the hand computation takes it.</summary>
    /// <param name="filled">Answers with assumptions where nothing is known.</param>
    /// <exception cref="ArgumentException">Age or cleans a day are neither known nor assumed.</exception>
    public static HandFacts Hand(Answers filled) => new()
    {
        AgeYears = Settled(filled, QuestionIds.Age),
        Sex = filled.Choice(QuestionIds.Sex) ?? Sex.Unstated,
        BestGrasp = filled.Choice(QuestionIds.Grasp) ?? Grasp.WholeHand,
        GraspObtained = filled[QuestionIds.Grasp]?.How ?? HowObtained.Reported,
        HandsFree = filled.Is(OptionIds.HandsFreeOne) ? 1 : 2,
        Dexterity = filled.Choice(QuestionIds.Dexterity) ?? Dexterity.Usual,
        Tremor = filled.Choice(QuestionIds.Tremor) ?? Tremor.None,
        GripNewtons = filled.Si(QuestionIds.Grip),
        PinchNewtons = filled.Si(QuestionIds.Pinch),
        PegSeconds = filled.Si(QuestionIds.Dexterity),
        CleansPerDay = Settled(filled, QuestionIds.Cleans),
    };

    /// <summary>A number that is known or assumed, SI.</summary>
    /// <exception cref="ArgumentException">It is neither.</exception>
    internal static double Settled(Answers filled, QuestionId question) =>
        filled.Si(question) ?? throw new ArgumentException($"{question} is neither known nor assumed", nameof(filled));

    private static ImmutableDictionary<JointMotion, ReachInput> Measured(AnswerValue.Parts parts, HowObtained? how)
    {
        var unit = Quantities.Units.Find(parts.Unit)!;
        return Joints.Where(j => parts.Amounts.ContainsKey(j.Part))
            .ToImmutableDictionary(j => j.Motion, j => new ReachInput(unit.ToSi(parts.Amounts[j.Part]), how ?? HowObtained.Measured));
    }

    private static ReachInput? Input(Answers known, QuestionId question) =>
        known.Si(question) is { } si ? new ReachInput(si, known[question]!.How ?? HowObtained.Reported) : null;
}
