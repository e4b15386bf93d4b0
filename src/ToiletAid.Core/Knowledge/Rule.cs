using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Knowledge;

/// <summary>A row of the hazard table as it stands in the file.</summary>
public sealed record Rule
{
    /// <summary>Stable id, kebab-case.</summary>
    public required string Id { get; init; }

    /// <summary>What follows.</summary>
    public required RuleKind Kind { get; init; }

    /// <summary>How serious it is.</summary>
    public required Severity Severity { get; init; }

    /// <summary>The harm in a few words.</summary>
    public required string Hazard { get; init; }

    /// <summary>Who is exposed, as a condition over answers and plans; empty for everybody.</summary>
    public string Exposed { get; init; } = string.Empty;

    /// <summary>What of the whole plan brings it, in the same language; empty for any plan.</summary>
    public string Brings { get; init; } = string.Empty;

    /// <summary>What is said. Slots in braces are filled with numbers of the case.</summary>
    public required string Text { get; init; }

    /// <summary>What to do, in at most twelve words; null where the plan is not offered.</summary>
    public string? Brief { get; init; }

    /// <summary>What is said to the person, in plain words; null where the plan is not offered.</summary>
    public string? Person { get; init; }

    /// <summary>What is said to a helper, where it is not the same.</summary>
    public string? Helper { get; init; }

    /// <summary>What the words ask of the person's own hands besides the plan; null for nothing.</summary>
    public AskedOfHands? Hands { get; init; }

    /// <summary>The words where the hands cannot do that; null where they ask nothing of them.</summary>
    public RuleWords? Helped { get; init; }

    /// <summary>Words for hands that cannot where no carer is ever there; null for those of <see cref="Helped"/>.</summary>
    public RuleWords? Alone { get; init; }

    /// <summary>What can be arranged so that it no longer stands in the way, and whom to ask; null where nothing can.</summary>
    public string? Arrange { get; init; }

    /// <summary>What it is for.</summary>
    public required string Purpose { get; init; }

    /// <summary>What kind of knowledge it rests on.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Where it comes from.</summary>
    public required string Source { get; init; }

    /// <summary>The rule in the words that fit the person's hands.</summary>
    /// <param name="handsDo">Whether the hands can do what the words ask for.</param>
    /// <param name="alone">Whether no carer is ever there.</param>
    public Rule For(bool handsDo, bool alone) => handsDo || ((alone ? Alone : null) ?? Helped) is not { } words ? this
        : this with { Text = words.Text, Brief = words.Brief, Person = words.Person, Helper = words.Helper ?? Helper };
}
