using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Catalogue;

/// <summary>A kind of aid, or a way of cleaning without one.</summary>
public sealed record Aid
{
    /// <summary>Stable id, kebab-case.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the kind that it is an article of, as a clinic's stock has them; null for a kind.</summary>
    public string? ArticleOf { get; init; }

    /// <summary>Id of its kind: what counts as one where kinds are compared.</summary>
    public string KindId => ArticleOf ?? Id;

    /// <summary>Descriptive name in the trade's words.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in short sentences.</summary>
    public required string Summary { get; init; }

    /// <summary>How it cleans.</summary>
    public required MethodKind Method { get; init; }

    /// <summary>What brings it to the skin.</summary>
    public required ReachKind Reach { get; init; }

    /// <summary>Length along its centreline from grip centre to the middle of the wiping face or the nozzle, m; null for hand, seat and helper.</summary>
    public Sourced? Length { get; init; }

    /// <summary>Distance that the jet covers beyond the nozzle, m; null where there is none.</summary>
    public Sourced? JetReach { get; init; }

    /// <summary>Shape of the handle.</summary>
    public AidShape Shape { get; init; }

    /// <summary>What meets the skin.</summary>
    public required Tip Tip { get; init; }

    /// <summary>Width of the head or tip with its paper, m; null where nothing solid enters the cleft.</summary>
    public Sourced? TipWidth { get; init; }

    /// <summary>Mass ready for use without water, kg; 0 when nothing is held.</summary>
    public required Sourced Mass { get; init; }

    /// <summary>Mass with a full reservoir, kg; <see cref="Mass"/> where there is none.</summary>
    public double FullKilograms => Mass.Value + (WaterUse.Density * (Water?.Reservoir?.Value ?? 0));

    /// <summary>Greatest length when folded or taken apart, m; null when it stays at the toilet.</summary>
    public Sourced? FoldedLength { get; init; }

    /// <summary>What the hand must do.</summary>
    public required ImmutableArray<Operation> Operations { get; init; }

    /// <summary>Paper, if it takes any.</summary>
    public PaperUse? Paper { get; init; }

    /// <summary>Water, if it uses any.</summary>
    public WaterUse? Water { get; init; }

    /// <summary>Share of the soiled skin that one careful pass covers, 0 to 1.</summary>
    public required Sourced Coverage { get; init; }

    /// <summary>Rubbing of the skin: 0 none, 1 as firm paper under a hard edge.</summary>
    public required Sourced Rubbing { get; init; }

    /// <summary>Used paper and soiled parts touched: 0 never, 1 always.</summary>
    public required Sourced SoilTouched { get; init; }

    /// <summary>How easily it is cleaned and disinfected: 0 not at all, 1 wiped down in a moment.</summary>
    public required Sourced EasyToClean { get; init; }

    /// <summary>How much it draws the eye when carried or standing at the toilet: 0 not at all, 1 at once.</summary>
    public required Sourced Noticeable { get; init; }

    /// <summary>Sound in use: 0 silent, 1 heard in the next room.</summary>
    public required Sourced Noise { get; init; }

    /// <summary>Steps from start to finish that the user must remember; 0 when another person does it.</summary>
    public required int Steps { get; init; }

    /// <summary>Need of sight: 0 none, 1 cannot be done without.</summary>
    public required Sourced NeedsSight { get; init; }

    /// <summary>Materials that touch skin and can cause allergy: silicone, latex, nickel.</summary>
    public required ImmutableArray<string> Materials { get; init; }

    /// <summary>Ways by which it can be brought to the skin; empty when it needs none.</summary>
    public required ImmutableArray<Approach> Approaches { get; init; }

    /// <summary>Postures in which it can be used.</summary>
    public required ImmutableArray<Posture> Postures { get; init; }

    /// <summary>Add-ons that combine with it.</summary>
    public required ImmutableArray<string> AddOns { get; init; }

    /// <summary>Companion methods: what may follow it.</summary>
    public required ImmutableArray<string> Companions { get; init; }

    /// <summary>True when it must be mounted or changes fixtures.</summary>
    public bool ChangesFixtures { get; init; }

    /// <summary>True when what it leaves behind must go into a bin.</summary>
    public bool NeedsBin { get; init; }

    /// <summary>Costs.</summary>
    public required Upkeep Upkeep { get; init; }

    /// <summary>In what articles of the kind differ; empty for one article.</summary>
    public ImmutableArray<AidVariant> Variants { get => field.IsDefault ? [] : field; init; }

    /// <summary>The variant of the kind that this is; null for the kind as it usually is. Its members have taken their places.</summary>
    public AidVariant? Variant { get; internal init; }

    /// <summary>Tells any two kinds, or variants of one, apart: what was worked out for one is not found for another.</summary>
    internal string Key => Variant is null ? Id : $"{Id}:{Variant.Id}";

    /// <summary>The kind in one of its variants. The one place where a variant becomes an aid, so that nothing that looks at an aid can miss it.</summary>
    /// <param name="variant">One of <see cref="Variants"/>.</param>
    public Aid As(AidVariant variant)
    {
        ArgumentNullException.ThrowIfNull(variant);
        return this with
        {
            Variant = variant,
            Variants = [],
            Name = variant.Name,
            Length = variant.Length ?? Length,
            Shape = variant.Shape ?? Shape,
            Tip = variant.Tip ?? Tip,
            TipWidth = variant.TipWidth ?? TipWidth,
            Mass = variant.Mass ?? Mass,
            FoldedLength = variant.FoldedLength ?? FoldedLength,
            Operations = variant.Operations.IsEmpty ? Operations : [.. Operations.Select(o => variant.Operations.FirstOrDefault(v => v.Kind == o.Kind) ?? o)],
            Coverage = variant.Coverage ?? Coverage,
            Rubbing = variant.Rubbing ?? Rubbing,
            SoilTouched = variant.SoilTouched ?? SoilTouched,
            EasyToClean = variant.EasyToClean ?? EasyToClean,
            Noticeable = variant.Noticeable ?? Noticeable,
            Steps = variant.Steps ?? Steps,
            Materials = [.. Materials.Union(variant.Materials)],
            Upkeep = Upkeep with { Price = variant.Price ?? Upkeep.Price, MonthlyConsumables = variant.MonthlyConsumables ?? Upkeep.MonthlyConsumables },
        };
    }

    /// <summary>One article of the kind, as it lies there: it has no variants, and is none.</summary>
    internal Aid AsArticle() => this with { Variant = null, Variants = [] };
}
