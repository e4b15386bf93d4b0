using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>One person as the criteria see them: every answer turned into the share that it counts for.</summary>
/// <param name="evidence">Limits and coefficients.</param>
/// <param name="filled">Answers, with assumptions or draws where nothing is known.</param>
/// <exception cref="ArgumentException">An answer that a criterion needs is neither known nor assumed.</exception>
internal sealed class PersonView(EvidenceTable evidence, Answers filled)
{
    // Worked out when it is first looked at, so that what a criterion hangs on can be told from the answers that it looked up.
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

    /// <summary>Share of the rubbing that counts as risk, 0 to 1.</summary>
    internal double Fragility => _fragility ??= Math.Min(1,
        evidence.Value("skin.fragility." + Settled(filled, "skin"))
        + Warning(evidence, filled)
        + (filled.Choice("bleeding") == "yes" ? evidence.Value("skin.bleeding") : 0)
        + (filled.Choice("sore-when-wiped") == "yes" ? evidence.Value("skin.sore") : 0));

    /// <summary>Lack of warning by feeling, 0 none is lacking.</summary>
    internal double LackOfWarning => _lackOfWarning ??= Warning(evidence, filled);

    internal bool MarkedTremor => filled.Choice("tremor") == "marked";

    internal double DryCleaning => _dryCleaning ??= evidence.Value("cleaning.dry." + Settled(filled, "stool"));

    internal double MoistCleaning => _moistCleaning ??= evidence.Value("cleaning.moist." + Settled(filled, "stool"));

    internal double WashCleaning => _washCleaning ??= evidence.Value("cleaning.wash." + Settled(filled, "stool"));

    internal int StoolType => _stoolType ??= int.Parse(Settled(filled, "stool"), System.Globalization.CultureInfo.InvariantCulture);

    internal bool SoilStaysDeep => filled.Choice("deep") == "yes";

    internal bool MenstrualBlood => filled.Many("also") is { } also && also.Contains("menstrual-blood");

    internal string WantedMethod => Settled(filled, "method");

    internal double TouchCounts => _touchCounts ??= evidence.Value("contact.touch." + Settled(filled, "paper-touch"));

    internal double CleaningCounts => _cleaningCounts ??= evidence.Value(filled.Choice("infection") == "yes" ? "contact.cleaning-infection" : "contact.cleaning");

    /// <summary>Steps followed in a row; +infinity for four or more.</summary>
    internal double FollowsSteps => _followsSteps ??= StepsFollowed(evidence, Settled(filled, "steps"));

    /// <summary>True when the hand can fold paper ahead of time, at a table and without haste.</summary>
    internal bool FoldsPaper => filled.Choice("grasp") is "fine-pinch" or "whole-hand" && filled.Choice("dexterity") != "cannot";

    internal bool SomebodyPrompts => Settled(filled, "helper") != "never";

    internal double SightCounts => _sightCounts ??= evidence.Value("learning.sight." + Settled(filled, "sight"));

    internal double CarryingCounts => _carryingCounts ??= evidence.Value("carrying.weight." + Settled(filled, "carry"));

    internal double NoticedCounts => _noticedCounts ??= evidence.Value("carrying.noticed." + Settled(filled, "look"));

    internal double HeardCounts => _heardCounts ??= evidence.Value("carrying.heard." + Settled(filled, "noise"));

    internal double CleansPerDay => _cleansPerDay ??= AnswerMapping.Settled(filled, "cleans");

    internal double? Budget => filled.Si("budget");

    internal bool WaterInReach => filled.Choice("water") == "basin-in-reach";

    internal bool SensitiveDrain => filled.Choice("drain") == "septic-or-easily-blocked";

    private static double Warning(EvidenceTable evidence, Answers filled) => evidence.Value("skin.feeling." + Settled(filled, "feeling"));

    /// <summary>Steps that somebody who gave an answer on steps follows in a row; +infinity for four or more, which is no upper end.</summary>
    /// <param name="evidence">Limits and coefficients.</param>
    /// <param name="steps">Option of the question on steps.</param>
    internal static double StepsFollowed(EvidenceTable evidence, string steps) =>
        steps == "four-or-more" ? double.PositiveInfinity : evidence.Value("learning.follows." + steps);

    // What is assumed while nothing is known stands with the questions, and nowhere a second time.
    private static string Settled(Answers filled, string question) =>
        filled.Choice(question) ?? throw new ArgumentException($"{question} is neither known nor assumed", nameof(filled));
}
