using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>One person as the criteria see them: every answer turned into the share that it counts for.</summary>
/// <param name="evidence">Limits and coefficients.</param>
/// <param name="filled">Answers, with assumptions or draws where nothing is known.</param>
/// <exception cref="ArgumentException">An answer that a criterion needs is neither known nor assumed.</exception>
internal sealed class PersonView(EvidenceTable evidence, Answers filled)
{
    /// <summary>Share of the rubbing that counts as risk, 0 to 1.</summary>
    internal double Fragility { get; } = Math.Min(1,
        evidence.Value("skin.fragility." + Settled(filled, "skin"))
        + Warning(evidence, filled)
        + (filled.Choice("bleeding") == "yes" ? evidence.Value("skin.bleeding") : 0)
        + (filled.Choice("sore-when-wiped") == "yes" ? evidence.Value("skin.sore") : 0));

    /// <summary>Lack of warning by feeling, 0 none is lacking.</summary>
    internal double LackOfWarning { get; } = Warning(evidence, filled);

    internal bool MarkedTremor { get; } = filled.Choice("tremor") == "marked";

    internal double DryCleaning { get; } = evidence.Value("cleaning.dry." + Settled(filled, "stool"));

    internal double MoistCleaning { get; } = evidence.Value("cleaning.moist." + Settled(filled, "stool"));

    internal double WashCleaning { get; } = evidence.Value("cleaning.wash." + Settled(filled, "stool"));

    internal int StoolType { get; } = int.Parse(Settled(filled, "stool"), System.Globalization.CultureInfo.InvariantCulture);

    internal bool SoilStaysDeep { get; } = filled.Choice("deep") == "yes";

    internal bool MenstrualBlood { get; } = filled.Many("also") is { } also && also.Contains("menstrual-blood");

    internal string WantedMethod { get; } = Settled(filled, "method");

    internal double TouchCounts { get; } = evidence.Value("contact.touch." + Settled(filled, "paper-touch"));

    internal double CleaningCounts { get; } = evidence.Value(filled.Choice("infection") == "yes" ? "contact.cleaning-infection" : "contact.cleaning");

    /// <summary>Steps followed in a row; +infinity for four or more.</summary>
    internal double FollowsSteps { get; } = StepsFollowed(evidence, Settled(filled, "steps"));

    internal bool SomebodyPrompts { get; } = Settled(filled, "helper") != "never";

    internal double SightCounts { get; } = evidence.Value("learning.sight." + Settled(filled, "sight"));

    internal double CarryingCounts { get; } = evidence.Value("carrying.weight." + Settled(filled, "carry"));

    internal double NoticedCounts { get; } = evidence.Value("carrying.noticed." + Settled(filled, "look"));

    internal double HeardCounts { get; } = evidence.Value("carrying.heard." + Settled(filled, "noise"));

    internal double CleansPerDay { get; } = AnswerMapping.Settled(filled, "cleans");

    internal double? Budget { get; } = filled.Si("budget");

    internal bool WaterInReach { get; } = filled.Choice("water") == "basin-in-reach";

    internal bool SensitiveDrain { get; } = filled.Choice("drain") == "septic-or-easily-blocked";

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
