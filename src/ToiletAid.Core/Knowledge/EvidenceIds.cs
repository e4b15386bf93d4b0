#pragma warning disable CS1591 // the data say what each of them means
using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Ids;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>Entries of the evidence that code names, held against the data when these are loaded (<see cref="NamedIds"/>).</summary>
public static class EvidenceIds
{
    private static readonly IdTable<EvidenceId> Named = new();
    private static readonly IdTable<EvidenceByOption> Families = new();

    public static readonly EvidenceId BalanceBendCaution = Id("balance.bend-caution");
    public static readonly EvidenceId BalanceLeanCaution = Id("balance.lean-caution");
    public static readonly EvidenceId BalanceLeanSaid = Id("balance.lean-said");
    public static readonly EvidenceId BalanceTwistCaution = Id("balance.twist-caution");
    public static readonly EvidenceId BodyShort = Id("body.short");
    public static readonly EvidenceId CarryingBulky = Id("carrying.bulky");
    public static readonly EvidenceId CarryingHeavy = Id("carrying.heavy");
    public static readonly EvidenceId CarryingLengthShare = Id("carrying.length-share");
    public static readonly EvidenceId CarryingMassShare = Id("carrying.mass-share");
    public static readonly EvidenceId CarryingPocket = Id("carrying.pocket");
    public static readonly EvidenceId CaseloadReviewWeeks = Id("caseload.review-weeks");
    public static readonly EvidenceId ChangeSteps = Id("change.steps");
    public static readonly EvidenceId CleaningCompanionShare = Id("cleaning.companion-share");
    public static readonly EvidenceId CleaningMenstrualDry = Id("cleaning.menstrual-dry");
    public static readonly EvidenceId CleaningNarrow = Id("cleaning.narrow");
    public static readonly EvidenceId CleaningShallowShare = Id("cleaning.shallow-share");
    public static readonly EvidenceId CleaningTooWide = Id("cleaning.too-wide");
    public static readonly EvidenceId CleaningUnwanted = Id("cleaning.unwanted");
    public static readonly EvidenceId CleaningWetLeft = Id("cleaning.wet-left");
    public static readonly EvidenceId CleaningWide = Id("cleaning.wide");
    public static readonly EvidenceId CleaningWideShare = Id("cleaning.wide-share");
    public static readonly EvidenceId ClinicCommonCriterion = Id("clinic.common.criterion");
    public static readonly EvidenceId ClinicCommonLogOdds = Id("clinic.common.log-odds");
    public static readonly EvidenceId ClinicFactor = Id("clinic.factor");
    public static readonly EvidenceId ClinicKindsCriterion = Id("clinic.kinds.criterion");
    public static readonly EvidenceId ClinicKindsLogOdds = Id("clinic.kinds.log-odds");
    public static readonly EvidenceId ClinicLeastCell = Id("clinic.least-cell");
    public static readonly EvidenceId ClinicLeastPeople = Id("clinic.least-people");
    public static readonly EvidenceId ClinicShift = Id("clinic.shift");
    public static readonly EvidenceId ClinicSurest = Id("clinic.surest");
    public static readonly EvidenceId ContactAfterWash = Id("contact.after-wash");
    public static readonly EvidenceId ContactCleaning = Id("contact.cleaning");
    public static readonly EvidenceId ContactCleaningInfection = Id("contact.cleaning-infection");
    public static readonly EvidenceId ContactSheetBetween = Id("contact.sheet-between");
    public static readonly EvidenceId ErrorJoints = Id("error.joints");
    public static readonly EvidenceId ErrorMass = Id("error.mass");
    public static readonly EvidenceId FallsAge = Id("falls.age");
    public static readonly EvidenceId FallsDizzy = Id("falls.dizzy");
    public static readonly EvidenceId FallsFeetHang = Id("falls.feet-hang");
    public static readonly EvidenceId FallsForgets = Id("falls.forgets");
    public static readonly EvidenceId FallsLean = Id("falls.lean");
    public static readonly EvidenceId FallsLikely = Id("falls.likely");
    public static readonly EvidenceId FallsNoBalance = Id("falls.no-balance");
    public static readonly EvidenceId FallsOld = Id("falls.old");
    public static readonly EvidenceId FallsOnTheLegs = Id("falls.on-the-legs");
    public static readonly EvidenceId FallsOneLeg = Id("falls.one-leg");
    public static readonly EvidenceId FallsSight = Id("falls.sight");
    public static readonly EvidenceId FallsTremor = Id("falls.tremor");
    public static readonly EvidenceId FittingBeyondRange = Id("fitting.beyond-range");
    public static readonly EvidenceId FittingStepForce = Id("fitting.step-force");
    public static readonly EvidenceId FittingStepLength = Id("fitting.step-length");
    public static readonly EvidenceId FittingStepMass = Id("fitting.step-mass");
    public static readonly EvidenceId FittingStepPrice = Id("fitting.step-price");
    public static readonly EvidenceId FittingStepReservoir = Id("fitting.step-reservoir");
    public static readonly EvidenceId FittingStepWidth = Id("fitting.step-width");
    public static readonly EvidenceId GripLight = Id("grip.light");
    public static readonly EvidenceId GripStrongShare = Id("grip.strong-share");
    public static readonly EvidenceId GripWeakShare = Id("grip.weak-share");
    public static readonly EvidenceId IndependenceByHelper = Id("independence.by-helper");
    public static readonly EvidenceId IndependenceMadeReady = Id("independence.made-ready");
    public static readonly EvidenceId IndependencePatted = Id("independence.patted");
    public static readonly EvidenceId IndependencePrompted = Id("independence.prompted");
    public static readonly EvidenceId LearningEachStep = Id("learning.each-step");
    public static readonly EvidenceId LearningNew = Id("learning.new");
    public static readonly EvidenceId LearningPrepareSteps = Id("learning.prepare-steps");
    public static readonly EvidenceId LearningPromptMost = Id("learning.prompt-most");
    public static readonly EvidenceId LearningPrompted = Id("learning.prompted");
    public static readonly EvidenceId LearningSightMatters = Id("learning.sight-matters");
    public static readonly EvidenceId PlannerAhead = Id("planner.ahead");
    public static readonly EvidenceId PlannerAllowedCounts = Id("planner.allowed-counts");
    public static readonly EvidenceId PlannerBuildShare = Id("planner.build-share");
    public static readonly EvidenceId PlannerChangeShare = Id("planner.change-share");
    public static readonly EvidenceId PlannerPositionShare = Id("planner.position-share");
    public static readonly EvidenceId PlannerTierShare = Id("planner.tier-share");
    public static readonly EvidenceId PlansAddOnGain = Id("plans.add-on-gain");
    public static readonly EvidenceId ReachLeastShare = Id("reach.least-share");
    public static readonly EvidenceId ReachSureShare = Id("reach.sure-share");
    public static readonly EvidenceId ScaldExample = Id("scald.example");
    public static readonly EvidenceId ScaldOld = Id("scald.old");
    public static readonly EvidenceId SeatUsualLimit = Id("seat.usual-limit");
    public static readonly EvidenceId SkinBleeding = Id("skin.bleeding");
    public static readonly EvidenceId SkinHardTip = Id("skin.hard-tip");
    public static readonly EvidenceId SkinPatShare = Id("skin.pat-share");
    public static readonly EvidenceId SkinScald = Id("skin.scald");
    public static readonly EvidenceId SkinSore = Id("skin.sore");
    public static readonly EvidenceId SkinTremor = Id("skin.tremor");
    public static readonly EvidenceId SkinWet = Id("skin.wet");
    public static readonly EvidenceId TrialEffortHard = Id("trial.effort.hard");
    public static readonly EvidenceId TrialEffortHardCounts = Id("trial.effort.hard-counts");
    public static readonly EvidenceId TrialEffortLight = Id("trial.effort.light");
    public static readonly EvidenceId TrialEffortMiddleCounts = Id("trial.effort.middle-counts");
    public static readonly EvidenceId TrialErrorDry = Id("trial.error.dry");
    public static readonly EvidenceId TrialErrorPrediction = Id("trial.error.prediction");
    public static readonly EvidenceId TrialErrorReal = Id("trial.error.real");
    public static readonly EvidenceId UpkeepDrain = Id("upkeep.drain");
    public static readonly EvidenceId UpkeepFixtures = Id("upkeep.fixtures");
    public static readonly EvidenceId UpkeepHalf = Id("upkeep.half");
    public static readonly EvidenceId UpkeepOverBudget = Id("upkeep.over-budget");
    public static readonly EvidenceId UpkeepSocket = Id("upkeep.socket");
    public static readonly EvidenceId UpkeepWaterFar = Id("upkeep.water-far");

    public static readonly EvidenceByMember<LandmarkBehind> ReachHandBehind = Each<LandmarkBehind>("reach.hand-behind.");
    public static readonly EvidenceByMember<LandmarkFront> ReachHandFront = Each<LandmarkFront>("reach.hand-front.");
    public static readonly EvidenceByMember<Depth> PlannerBudget = Each<Depth>("planner.budget.");
    public static readonly EvidenceByMember<Depth> PlannerLossLimit = Each<Depth>("planner.loss-limit.");
    public static readonly EvidenceByMember<Depth> PlannerLossMuch = Each<Depth>("planner.loss-much.");
    public static readonly EvidenceByMember<Depth> PlannerMore = Each<Depth>("planner.more.");

    public static readonly EvidenceByOption CarryingHeard = Each("carrying.heard.", QuestionIds.Noise);
    public static readonly EvidenceByOption CarryingNoticed = Each("carrying.noticed.", QuestionIds.Look);
    public static readonly EvidenceByOption CarryingWeight = Each("carrying.weight.", QuestionIds.Carry);
    public static readonly EvidenceByOption CleaningDry = Each("cleaning.dry.", QuestionIds.Stool);
    public static readonly EvidenceByOption CleaningMoist = Each("cleaning.moist.", QuestionIds.Stool);
    public static readonly EvidenceByOption CleaningWash = Each("cleaning.wash.", QuestionIds.Stool);
    public static readonly EvidenceByOption ContactTouch = Each("contact.touch.", QuestionIds.PaperTouch);
    public static readonly EvidenceByOption LearningFollows = Each("learning.follows.", QuestionIds.Steps, OptionIds.StepsFourOrMore);
    public static readonly EvidenceByOption LearningSight = Each("learning.sight.", QuestionIds.Sight);
    public static readonly EvidenceByOption SkinFeeling = Each("skin.feeling.", QuestionIds.Feeling);
    public static readonly EvidenceByOption SkinFragility = Each("skin.fragility.", QuestionIds.Skin);

    /// <summary>All of them, but those by option.</summary>
    internal static IReadOnlyList<EvidenceId> All => Named.All;

    /// <summary>Those of which there is one for each option of a question.</summary>
    internal static IReadOnlyList<EvidenceByOption> ByOption => Families.All;

    private static EvidenceId Id(string id) => Named.Add(new(id));

    private static EvidenceByMember<T> Each<T>(string front)
        where T : struct, Enum
    {
        var family = new EvidenceByMember<T>(front);
        foreach (var id in family.All)
        {
            Named.Add(id);
        }

        return family;
    }

    private static EvidenceByOption Each(string front, QuestionId question, params ImmutableArray<OptionId> without) => Families.Add(new(front, question, without));
}
