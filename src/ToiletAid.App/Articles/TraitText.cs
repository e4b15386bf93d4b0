using System.Collections.Immutable;
using ToiletAid.App.Typed;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Articles;

/// <summary>What an article may differ in, in words: what it must be like, and how that is checked with a ruler, a kitchen scale and a luggage scale.</summary>
/// <param name="knowledge">Names of the add-ons.</param>
public sealed class TraitText(KnowledgeBase knowledge)
{
    private static readonly Unit Kilograms = Units.Find("kgf")!;
    private static readonly Unit Centimetre = Units.Find("cm")!;

    /// <summary>The unit in which it is told.</summary>
    /// <param name="trait">A number.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not a number.</exception>
    public static Unit UnitOf(ArticleTrait trait)
    {
        ArgumentNullException.ThrowIfNull(trait);
        return Units.Find(trait.Kind switch
        {
            ArticleTraitKind.Length or ArticleTraitKind.JetReach or ArticleTraitKind.TipWidth or ArticleTraitKind.FoldedLength => "cm",
            ArticleTraitKind.Mass => "g",
            ArticleTraitKind.Reservoir => "ml",
            ArticleTraitKind.LoadForce or ArticleTraitKind.ReleaseForce or ArticleTraitKind.WashForce => "N",
            ArticleTraitKind.Price => "money",
            ArticleTraitKind.Carries => "kg",
            ArticleTraitKind.WaterTemperature or ArticleTraitKind.FillTemperature => "C",
            _ => throw new ArgumentOutOfRangeException(nameof(trait), trait, "is not a number"),
        })!;
    }

    /// <summary>What to look for, one sentence.</summary>
    /// <param name="line">The line.</param>
    /// <param name="unitTwice">True to say the unit with each number, for papers on which another unit is put beside it.</param>
    public string Sentence(ArticleLine line, bool unitTwice = false)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (!line.Trait.IsNumber)
        {
            return Has(line.Trait);
        }

        if (line is { Limit: null, Sure: null })
        {
            return $"{Spoken.Capital(Bearer(line.Trait))} above what this person weighs.";
        }

        string bound = $"{(line.AtLeast ? "at least" : "at most")} {Amount(line.Trait, line.Limit ?? line.Sure!.Value, line.AtLeast)}";
        string sure = line.Sure is not { } s ? string.Empty
            : line.Limit is null ? ", to be sure"
            : $", {(unitTwice ? Spoken.Amount(UnitOf(line.Trait).FromSi(s), UnitOf(line.Trait)) : Spoken.Number(UnitOf(line.Trait).FromSi(s)))} to be sure";
        return $"{Spoken.Capital(Named(line.Trait, bound))}{sure}.";
    }

    /// <summary>The same in short, with one number that is safe to go by, for a sheet on which a shop is only one thing among others.</summary>
    /// <param name="line">The line.</param>
    public string InShort(ArticleLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Trait.Kind switch
        {
            ArticleTraitKind.WaterTemperature => $"Its hottest water is {Amount(line.Trait, line.Limit!.Value, false)} or less.",
            ArticleTraitKind.FillTemperature => "A bath thermometer with it.",
            _ => Sentence(line with { Limit = line.Sure ?? line.Limit, Sure = null }),
        };
    }

    /// <summary>The tools that the check takes; none for what is read or tried.</summary>
    /// <param name="trait">What is checked.</param>
    public ImmutableArray<string> Tools(ArticleTrait trait)
    {
        ArgumentNullException.ThrowIfNull(trait);
        return trait.Kind switch
        {
            ArticleTraitKind.Length => ["a ruler", "a string"],
            ArticleTraitKind.JetReach or ArticleTraitKind.TipWidth or ArticleTraitKind.FoldedLength or ArticleTraitKind.Curved => ["a ruler"],
            ArticleTraitKind.TakesAddOn => [Thickness(trait) is null ? $"the {AddOn(trait.Of!)}" : "a ruler"],
            ArticleTraitKind.Mass or ArticleTraitKind.Reservoir => ["a kitchen scale"],
            ArticleTraitKind.LoadForce or ArticleTraitKind.ReleaseForce or ArticleTraitKind.WashForce => ["a luggage scale"],
            _ => [],
        };
    }

    /// <summary>How it is checked, one sentence or two.</summary>
    /// <param name="trait">What is checked.</param>
    public string Check(ArticleTrait trait)
    {
        ArgumentNullException.ThrowIfNull(trait);
        return trait.Kind switch
        {
            ArticleTraitKind.Length => "Lay the string along it from mid grip to mid face or nozzle, and measure the string.",
            ArticleTraitKind.JetReach => "Spray level over a basin, and measure how far it still hits as a jet.",
            ArticleTraitKind.TipWidth => "Put the paper on, and measure the head across at its widest.",
            ArticleTraitKind.FoldedLength => "Make it as small as for carrying, and measure the longest part.",
            ArticleTraitKind.Mass => "Weigh it without water and without paper.",
            ArticleTraitKind.Reservoir => "Weigh it empty, then full; the extra grams are its millilitres.",
            ArticleTraitKind.LoadForce => "Hook the luggage scale to the part that opens for the paper, and pull slowly.",
            ArticleTraitKind.ReleaseForce => "Hook the luggage scale to the lever or button, and pull slowly until it lets go.",
            ArticleTraitKind.WashForce => "Hook the luggage scale to the lever or trigger, and pull slowly until water flows.",
            ArticleTraitKind.Price => "Ask for the price.",
            ArticleTraitKind.Carries => "Read the weight limit on its label.",
            ArticleTraitKind.WaterTemperature => "Read its highest setting on the label, or ask the maker.",
            ArticleTraitKind.FillTemperature => "Buy a bath thermometer with it, and use it each time.",
            ArticleTraitKind.Curved => "Lay it along the ruler: a straight one touches it all along.",
            ArticleTraitKind.SoftTip => "Press the head with a thumb: a soft one gives.",
            ArticleTraitKind.OneHandLoad => "Put paper on with one hand, the other behind your back.",
            ArticleTraitKind.EasyLoad => "Put paper on: no end has to be tucked in or threaded.",
            ArticleTraitKind.ReleaseWithoutGrip => "Put paper on, and let it go with the flat hand or against your thigh.",
            ArticleTraitKind.WashWithoutGrip => "Work it with the flat hand, without closing the fingers.",
            ArticleTraitKind.TakesAddOn when Thickness(trait) is not null => $"Measure the handle across at the palm, or put the {AddOn(trait.Of!)} on it and pull: it must stay.",
            ArticleTraitKind.TakesAddOn => $"Put the {AddOn(trait.Of!)} on it in the shop, and pull: it must stay.",
            _ => "Read the label, or ask the maker: it cannot be seen.",
        };
    }

    /// <summary>The word by which it is given on the command line and in data, such as length or takes-hand-cuff.</summary>
    /// <param name="trait">What is named.</param>
    public static string Id(ArticleTrait trait)
    {
        ArgumentNullException.ThrowIfNull(trait);
        return trait.Kind switch
        {
            ArticleTraitKind.TakesAddOn => $"takes-{trait.Of}",
            ArticleTraitKind.FreeOf => $"free-of-{trait.Of}",
            _ => Words.Of(trait.Kind),
        };
    }

    /// <summary>Its name, as the subject of a sentence.</summary>
    /// <param name="trait">What is named.</param>
    public string Name(ArticleTrait trait)
    {
        ArgumentNullException.ThrowIfNull(trait);
        return trait.Kind switch
        {
            ArticleTraitKind.Length => "Length",
            ArticleTraitKind.JetReach => "Reach of the jet",
            ArticleTraitKind.TipWidth => "Width of the head",
            ArticleTraitKind.FoldedLength => "Folded length",
            ArticleTraitKind.Mass => "Weight",
            ArticleTraitKind.Reservoir => "Reservoir",
            ArticleTraitKind.LoadForce => "Force to put paper on",
            ArticleTraitKind.ReleaseForce => "Force to let go",
            ArticleTraitKind.WashForce => "Force to wash",
            ArticleTraitKind.Price => "Price",
            ArticleTraitKind.Carries => "Weight limit",
            ArticleTraitKind.WaterTemperature => "Highest water temperature",
            ArticleTraitKind.FillTemperature => "Temperature of the water that is filled in",
            ArticleTraitKind.Curved => "Curved",
            ArticleTraitKind.SoftTip => "Soft head",
            ArticleTraitKind.OneHandLoad => "Paper put on with one hand",
            ArticleTraitKind.EasyLoad => "Paper put on without tucking or threading",
            ArticleTraitKind.ReleaseWithoutGrip => "Let go with the palm or against the body",
            ArticleTraitKind.WashWithoutGrip => "Water worked with palm or forearm",
            ArticleTraitKind.TakesAddOn => $"Takes {AddOn(trait.Of!)}",
            _ => $"Free of {trait.Of}",
        };
    }

    private static string Amount(ArticleTrait trait, double si, bool atLeast)
    {
        var unit = UnitOf(trait);
        string amount = Spoken.Amount(unit.FromSi(si), unit);
        if (unit.Dimension != Dimension.Force)
        {
            return amount;
        }

        // A luggage scale shows kilograms; its tenth is taken on the good side.
        double tenths = Kilograms.FromSi(si) * 10;
        return $"{amount}, {Spoken.Amount((atLeast ? Math.Ceiling(tenths) : Math.Floor(tenths)) / 10, Units.Find("kg")!)} on the scale";
    }

    private string Named(ArticleTrait trait, string bound) => trait.Kind switch
    {
        ArticleTraitKind.Length => $"{bound} long",
        ArticleTraitKind.JetReach => $"a jet of {bound}",
        ArticleTraitKind.TipWidth => $"a head {bound} wide",
        ArticleTraitKind.FoldedLength => $"{bound} long when folded or taken apart",
        ArticleTraitKind.Mass => $"a weight of {bound}",
        ArticleTraitKind.Reservoir => $"a reservoir of {bound}",
        ArticleTraitKind.LoadForce => $"{bound}, to put paper on",
        ArticleTraitKind.ReleaseForce => $"{bound}, to let go",
        ArticleTraitKind.WashForce => $"{bound}, to wash",
        ArticleTraitKind.Carries => $"{Bearer(trait)} of {bound}",
        ArticleTraitKind.WaterTemperature => $"water of {bound} at its highest setting",
        ArticleTraitKind.FillTemperature => $"water of {bound} when it is filled",
        _ => $"a price of {bound}",
    };

    private string Has(ArticleTrait trait) => trait.Kind switch
    {
        ArticleTraitKind.Curved => "Curved, or one that can be set to a curve.",
        ArticleTraitKind.SoftTip => "A soft head.",
        ArticleTraitKind.OneHandLoad => "Paper goes on with one hand.",
        ArticleTraitKind.EasyLoad => "Paper goes on without tucking or threading.",
        ArticleTraitKind.ReleaseWithoutGrip => "Let go with the palm, or pressed against thigh, hip or seat.",
        ArticleTraitKind.WashWithoutGrip => "Water worked with palm or forearm.",
        ArticleTraitKind.TakesAddOn when Thickness(trait) is { } thick => $"A handle {Spoken.Number(Centimetre.FromSi(thick.Low))} to {Spoken.Amount(Centimetre.FromSi(thick.High), Centimetre)} thick, or one that takes this: {AddOn(trait.Of!)}.",
        ArticleTraitKind.TakesAddOn => $"A handle that takes this: {AddOn(trait.Of!)}.",
        _ => $"No {trait.Of} where it touches the skin.",
    };

    /// <summary>What is made for a weight: the article, or an add-on of the plan.</summary>
    private string Bearer(ArticleTrait trait) => trait.Of is null ? "a weight limit" : $"a weight limit for the {AddOn(trait.Of)}";

    private Sourced? Thickness(ArticleTrait trait) => knowledge.Catalogue.AddOns.FirstOrDefault(a => a.Id == trait.Of)?.Thickness;

    private string AddOn(string id) => Wording.PlanText.Lower(knowledge.Catalogue.AddOns.FirstOrDefault(a => a.Id == id) is { } addOn ? addOn.Name : id);
}
