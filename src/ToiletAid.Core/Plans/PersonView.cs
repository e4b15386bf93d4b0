using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>One person as the criteria see them: every answer turned into the share that it counts for.</summary>
/// <param name="evidence">Limits and coefficients.</param>
/// <param name="filled">Answers, with assumptions or draws where nothing is known.</param>
/// <exception cref="ArgumentException">An answer that a criterion needs is neither known nor assumed.</exception>
internal sealed class PersonView(EvidenceTable evidence, Answers filled)
{
    // Worked out when it is first looked at, so that what a criterion depends on can be told from the answers that it looked up.
    private double? _fragility;
    private double? _lackOfWarning;
    private double? _dryCleaning;
    private double? _moistCleaning;
    private double? _washCleaning;
    private int? _stoolType;
    private double? _touchCounts;
    private double? _cleaningCounts;
    private double? _followsSteps;
    private double? _sightCounts;
    private double? _carryingCounts;
    private double? _noticedCounts;
    private double? _heardCounts;
    private double? _cleansPerDay;
    private bool? _markedTremor;
    private bool? _soilStaysDeep;
    private bool? _menstrualBlood;
    private string? _wantedMethod;
    private bool? _foldsPaper;
    private bool? _somebodyPrompts;
    private bool? _waterInReach;
    private bool? _sensitiveDrain;
    private (bool IsKnown, double? Value) _budget;

    /// <summary>Share of the rubbing that counts as risk, 0 to 1.</summary>
    internal double Fragility => _fragility ??= Math.Min(1,
        evidence.Value(EvidenceIds.SkinFragility[Settled(filled, QuestionIds.Skin)])
        + Warning(evidence, filled)
        + (filled.Is(OptionIds.BleedingYes) ? evidence.Value(EvidenceIds.SkinBleeding) : 0)
        + (filled.Is(OptionIds.SoreWhenWipedYes) ? evidence.Value(EvidenceIds.SkinSore) : 0));

    /// <summary>Lack of warning by feeling, 0 none is lacking.</summary>
    internal double LackOfWarning => _lackOfWarning ??= Warning(evidence, filled);

    internal bool MarkedTremor => _markedTremor ??= filled.Choice(QuestionIds.Tremor) == Tremor.Marked;

    internal double DryCleaning => _dryCleaning ??= evidence.Value(EvidenceIds.CleaningDry[Settled(filled, QuestionIds.Stool)]);

    internal double MoistCleaning => _moistCleaning ??= evidence.Value(EvidenceIds.CleaningMoist[Settled(filled, QuestionIds.Stool)]);

    internal double WashCleaning => _washCleaning ??= evidence.Value(EvidenceIds.CleaningWash[Settled(filled, QuestionIds.Stool)]);

    internal int StoolType => _stoolType ??= int.Parse(Settled(filled, QuestionIds.Stool), System.Globalization.CultureInfo.InvariantCulture);

    internal bool SoilStaysDeep => _soilStaysDeep ??= filled.Is(OptionIds.DeepYes);

    internal bool MenstrualBlood => _menstrualBlood ??= filled.Has(OptionIds.AlsoMenstrualBlood);

    internal string WantedMethod => _wantedMethod ??= Settled(filled, QuestionIds.Method);

    internal double TouchCounts => _touchCounts ??= evidence.Value(EvidenceIds.ContactTouch[Settled(filled, QuestionIds.PaperTouch)]);

    internal double CleaningCounts => _cleaningCounts ??= evidence.Value(filled.Is(OptionIds.InfectionYes) ? EvidenceIds.ContactCleaningInfection : EvidenceIds.ContactCleaning);

    /// <summary>Steps followed in a row; +infinity for four or more.</summary>
    internal double FollowsSteps => _followsSteps ??= StepsFollowed(evidence, Settled(filled, QuestionIds.Steps));

    /// <summary>True when the hand can fold paper ahead of time, at a table and without haste.</summary>
    internal bool FoldsPaper => _foldsPaper ??= filled.Choice(QuestionIds.Grasp) is Grasp.FinePinch or Grasp.WholeHand && filled.Choice(QuestionIds.Dexterity) != Dexterity.Cannot;

    internal bool SomebodyPrompts => _somebodyPrompts ??= Settled(filled, QuestionIds.Helper) != OptionIds.HelperNever.Text;

    internal double SightCounts => _sightCounts ??= evidence.Value(EvidenceIds.LearningSight[Settled(filled, QuestionIds.Sight)]);

    internal double CarryingCounts => _carryingCounts ??= evidence.Value(EvidenceIds.CarryingWeight[Settled(filled, QuestionIds.Carry)]);

    internal double NoticedCounts => _noticedCounts ??= evidence.Value(EvidenceIds.CarryingNoticed[Settled(filled, QuestionIds.Look)]);

    internal double HeardCounts => _heardCounts ??= evidence.Value(EvidenceIds.CarryingHeard[Settled(filled, QuestionIds.Noise)]);

    internal double CleansPerDay => _cleansPerDay ??= AnswerMapping.Settled(filled, QuestionIds.Cleans);

    internal double? Budget
    {
        get
        {
            _budget = _budget.IsKnown ? _budget : (true, filled.Si(QuestionIds.Budget));
            return _budget.Value;
        }
    }

    internal bool WaterInReach => _waterInReach ??= filled.Is(OptionIds.WaterBasinInReach);

    internal bool SensitiveDrain => _sensitiveDrain ??= filled.Is(OptionIds.DrainSepticOrEasilyBlocked);

    private static double Warning(EvidenceTable evidence, Answers filled) => evidence.Value(EvidenceIds.SkinFeeling[Settled(filled, QuestionIds.Feeling)]);

    /// <summary>Steps that somebody who gave an answer on steps follows in a row; +infinity for four or more, which is not an upper end.</summary>
    /// <param name="evidence">Limits and coefficients.</param>
    /// <param name="steps">Option of the question on steps.</param>
    internal static double StepsFollowed(EvidenceTable evidence, string steps) =>
        steps == OptionIds.StepsFourOrMore.Text ? double.PositiveInfinity : evidence.Value(EvidenceIds.LearningFollows[steps]);

    // What is assumed while nothing is known stands with the questions, and nowhere a second time.
    private static string Settled(Answers filled, QuestionId question) =>
        filled.Choice(question) ?? throw new ArgumentException($"{question} is neither known nor assumed", nameof(filled));
}
