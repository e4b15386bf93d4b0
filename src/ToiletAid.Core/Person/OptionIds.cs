#pragma warning disable CS1591 // the data say what each of them means
using ToiletAid.Core.Ids;

namespace ToiletAid.Core.Person;

/// <summary>Options that code names, held against the data when these are loaded (<c>NamedIds</c>). Where an enum has all options of a question, its members are the names.</summary>
public static class OptionIds
{
    private static readonly IdTable<OptionId> Named = new();

    public static readonly OptionId PrecautionHipFlexionLimit = Option(QuestionIds.Precautions, "hip-flexion-limit");
    public static readonly OptionId PrecautionNoTwistingOrBending = Option(QuestionIds.Precautions, "no-twisting-or-bending");
    public static readonly OptionId PrecautionBrittleBones = Option(QuestionIds.Precautions, "brittle-bones");
    public static readonly OptionId PrecautionSternal = Option(QuestionIds.Precautions, "sternal");
    public static readonly OptionId PrecautionShoulderSurgery = Option(QuestionIds.Precautions, "shoulder-surgery");
    public static readonly OptionId PrecautionNoWeightThroughTheHand = Option(QuestionIds.Precautions, "no-weight-through-the-hand");
    public static readonly OptionId PrecautionNoWeightOnALeg = Option(QuestionIds.Precautions, "no-weight-on-a-leg");
    public static readonly OptionId PrecautionDizzyWhenLeaning = Option(QuestionIds.Precautions, "dizzy-when-leaning");
    public static readonly OptionId PrecautionAllergySilicone = Option(QuestionIds.Precautions, "allergy-silicone");
    public static readonly OptionId PrecautionAllergyNickel = Option(QuestionIds.Precautions, "allergy-nickel");
    public static readonly OptionId PrecautionAllergyLatex = Option(QuestionIds.Precautions, "allergy-latex");
    public static readonly OptionId PrecautionSideLeft = Option(QuestionIds.PrecautionSide, "left");
    public static readonly OptionId PrecautionSideRight = Option(QuestionIds.PrecautionSide, "right");
    public static readonly OptionId ConditionHeatNotFeltByTheHand = Option(QuestionIds.Conditions, "heat-not-felt-by-the-hand");
    public static readonly OptionId HandsFreeOne = Option(QuestionIds.HandsFree, "one");
    public static readonly OptionId PlaceOwnToilet = Option(QuestionIds.Place, "own-toilet");
    public static readonly OptionId PlaceSharedOrPublicToilet = Option(QuestionIds.Place, "shared-or-public-toilet");
    public static readonly OptionId PlaceCommode = Option(QuestionIds.Place, "commode");
    public static readonly OptionId PlaceBed = Option(QuestionIds.Place, "bed");
    public static readonly OptionId FeelingUsual = Option(QuestionIds.Feeling, "usual");
    public static readonly OptionId FeelingReduced = Option(QuestionIds.Feeling, "reduced");
    public static readonly OptionId FeelingNone = Option(QuestionIds.Feeling, "none");
    public static readonly OptionId BleedingYes = Option(QuestionIds.Bleeding, "yes");
    public static readonly OptionId SoreWhenWipedYes = Option(QuestionIds.SoreWhenWiped, "yes");
    public static readonly OptionId DeepYes = Option(QuestionIds.Deep, "yes");
    public static readonly OptionId AlsoMenstrualBlood = Option(QuestionIds.Also, "menstrual-blood");
    public static readonly OptionId InfectionYes = Option(QuestionIds.Infection, "yes");
    public static readonly OptionId StepsOne = Option(QuestionIds.Steps, "one");
    public static readonly OptionId StepsTwoOrThree = Option(QuestionIds.Steps, "two-or-three");
    public static readonly OptionId StepsFourOrMore = Option(QuestionIds.Steps, "four-or-more");
    public static readonly OptionId SightNone = Option(QuestionIds.Sight, "none");
    public static readonly OptionId WaterBasinInReach = Option(QuestionIds.Water, "basin-in-reach");
    public static readonly OptionId SocketYes = Option(QuestionIds.Socket, "yes");
    public static readonly OptionId FixturesYes = Option(QuestionIds.Fixtures, "yes");
    public static readonly OptionId FixturesNo = Option(QuestionIds.Fixtures, "no");
    public static readonly OptionId DrainSepticOrEasilyBlocked = Option(QuestionIds.Drain, "septic-or-easily-blocked");
    public static readonly OptionId HelperNever = Option(QuestionIds.Helper, "never");
    public static readonly OptionId HelperSometimes = Option(QuestionIds.Helper, "sometimes");
    public static readonly OptionId HelperAlways = Option(QuestionIds.Helper, "always");

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<OptionId> All => Named.All;

    private static OptionId Option(QuestionId question, string option) => Named.Add(new(question, option));
}
