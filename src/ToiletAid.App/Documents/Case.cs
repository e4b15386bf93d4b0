using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>What a document is about.</summary>
public sealed record Case
{
    /// <summary>Everything known beforehand.</summary>
    public required KnowledgeBase Knowledge { get; init; }

    /// <summary>Words of the documents.</summary>
    public required DocumentData Words { get; init; }

    /// <summary>Code of the person.</summary>
    public required string Person { get; init; }

    /// <summary>The visit.</summary>
    public required Session Session { get; init; }

    /// <summary>What the therapist noted at the visit and since, in words of their own.</summary>
    public required ImmutableArray<PastNote> Notes { get; init; }

    /// <summary>The advice.</summary>
    public required Advice Advice { get; init; }

    /// <summary>How it was computed.</summary>
    public required AdviceSettings Settings { get; init; }

    /// <summary>The plan that was taken; null when there is none.</summary>
    public required RankedPlan? Chosen { get; init; }

    /// <summary>Finds what an article for the plan must be like; null where nothing is bought for it.</summary>
    internal Func<ArticleDemand?> Demand { get; init; } = () => null;

    /// <summary>Language of the document.</summary>
    public required English English { get; init; }

    /// <summary>How the advice was computed, a few sentences: version, data, seed and draws, with which anybody gets the same again.</summary>
    internal string Made => string.Join(' ', ClinicText.Used(Knowledge).Prepend(Computed));

    private string Computed => Words.Text(
        "note.made.text",
        ("version", KnowledgeVersion.Program),
        ("hash", KnowledgeVersion.Knowledge),
        ("seed", Settings.Seed.ToString(CultureInfo.InvariantCulture)),
        ("persons", Settings.ValueDraws.ToString(CultureInfo.InvariantCulture)),
        ("weightings", Settings.WeightDraws.ToString(CultureInfo.InvariantCulture)));
}
