using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>One person as the criteria see them: every answer turned into the share that it counts for.</summary>
/// <param name="evidence">Limits and coefficients.</param>
/// <param name="filled">Answers, with assumptions or draws where nothing is known.</param>
internal sealed class PersonView(EvidenceTable evidence, Answers filled)
{
    /// <summary>Share of the rubbing that counts as risk, 0 to 1.</summary>
    internal double Fragility { get; } = Math.Min(1,
        evidence.Value("skin.fragility." + Choice(filled, "skin", "sound"))
        + Warning(evidence, filled)
        + (filled.Choice("bleeding") == "yes" ? evidence.Value("skin.bleeding") : 0)
        + (filled.Choice("sore-when-wiped") == "yes" ? evidence.Value("skin.sore") : 0));

    /// <summary>Lack of warning by feeling, 0 none is lacking.</summary>
    internal double LackOfWarning { get; } = Warning(evidence, filled);

    internal bool MarkedTremor { get; } = filled.Choice("tremor") == "marked";

    internal double DryCleaning { get; } = evidence.Value("cleaning.dry." + Choice(filled, "stool", "4"));

    internal double MoistCleaning { get; } = evidence.Value("cleaning.moist." + Choice(filled, "stool", "4"));

    internal double WashCleaning { get; } = evidence.Value("cleaning.wash." + Choice(filled, "stool", "4"));

    internal int StoolType { get; } = int.Parse(Choice(filled, "stool", "4"), System.Globalization.CultureInfo.InvariantCulture);

    internal bool SoilStaysDeep { get; } = filled.Choice("deep") == "yes";

    internal bool MenstrualBlood { get; } = filled.Many("also") is { } also && also.Contains("menstrual-blood");

    internal string WantedMethod { get; } = Choice(filled, "method", "either");

    internal double TouchCounts { get; } = evidence.Value("contact.touch." + Choice(filled, "paper-touch", "fine"));

    internal double CleaningCounts { get; } = evidence.Value(filled.Choice("infection") == "yes" ? "contact.cleaning-infection" : "contact.cleaning");

    /// <summary>Steps followed in a row; +infinity for four or more.</summary>
    internal double FollowsSteps { get; } = Choice(filled, "steps", "four-or-more") == "four-or-more" ? double.PositiveInfinity : evidence.Value("learning.follows." + filled.Choice("steps"));

    internal bool SomebodyPrompts { get; } = Choice(filled, "helper", "sometimes") != "never";

    internal double SightCounts { get; } = evidence.Value("learning.sight." + Choice(filled, "sight", "enough"));

    internal double CarryingCounts { get; } = evidence.Value("carrying.weight." + Choice(filled, "carry", "never"));

    internal double NoticedCounts { get; } = evidence.Value("carrying.noticed." + Choice(filled, "look", "does-not-matter"));

    internal double HeardCounts { get; } = evidence.Value("carrying.heard." + Choice(filled, "noise", "does-not-matter"));

    internal double CleansPerDay { get; } = filled.Si("cleans") ?? evidence.Value("upkeep.cleans");

    internal double? Budget { get; } = filled.Si("budget");

    internal bool WaterInReach { get; } = filled.Choice("water") == "basin-in-reach";

    internal bool SensitiveDrain { get; } = filled.Choice("drain") == "septic-or-easily-blocked";

    private static double Warning(EvidenceTable evidence, Answers filled) => evidence.Value("skin.feeling." + Choice(filled, "feeling", "usual"));

    private static string Choice(Answers filled, string question, string otherwise) => filled.Choice(question) ?? otherwise;
}
