using System.Collections.Immutable;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Fitting;

namespace ToiletAid.App.Stock;

/// <summary>What can be measured of each kind of aid with a ruler, a kitchen scale and a luggage scale.</summary>
/// <remarks>Ranges, units and errors of the tools stand in ranges.json.</remarks>
internal static class Measurements
{
    internal const string Gentle = "Gentle flow";
    internal const string Strong = "Strong flow";

    private const string Ruler = "a ruler";
    private const string Kitchen = "a kitchen scale";
    private const string Luggage = "a luggage scale";
    /// <summary>Kilograms in a cubic metre of water.</summary>
    private const double CubicMetreKilograms = 1000;

    private const string RulerError = "ruler";
    private const string KitchenError = "kitchen-scale";

    /// <summary>What can be measured of an aid like this one.</summary>
    internal static ImmutableArray<Measurement> Of(Aid kind) =>
    [
        .. Lengths(kind),
        .. kind.Mass.High > 0 ? [Mass()] : (Measurement[])[],
        .. kind.Paper?.HeadGirth is null ? (Measurement[])[] : [Girth()],
        .. kind.Water is { } water ? Water(water) : [],
        .. kind.Operations.Where(o => IsOfTheAid(kind, o)).DistinctBy(o => o.Kind).Select(o => Force(o.Kind)),
        Price(),
    ];

    /// <summary>How one number of an article is measured.</summary>
    /// <param name="trait">A number.</param>
    internal static Measurement Of(ArticleTrait trait) => trait.Kind switch
    {
        ArticleTraitKind.Length => Length("Length", "Hold a string along the middle of it, round its curve, from the middle of the grip to the middle of the wiping face or the nozzle. Lay the string along the ruler.", "length"),
        ArticleTraitKind.JetReach => Jet(),
        ArticleTraitKind.TipWidth => Width(),
        ArticleTraitKind.FoldedLength => Folded(),
        ArticleTraitKind.Mass => Mass(),
        ArticleTraitKind.Reservoir => Reservoir(),
        ArticleTraitKind.LoadForce => Force(OperationKind.Load),
        ArticleTraitKind.ReleaseForce => Force(OperationKind.Release),
        ArticleTraitKind.WashForce => Force(OperationKind.Clean),
        ArticleTraitKind.Price => Price(),
        _ => throw new ArgumentOutOfRangeException(nameof(trait), trait, "is not a number"),
    };

    /// <summary>Wiping and washing up take what the person gives them; a lever, a trigger or a squeezed bottle asks for a force of its own.</summary>
    private static bool IsOfTheAid(Aid kind, Operation operation) => operation.Kind switch
    {
        OperationKind.Load or OperationKind.Release => kind.Reach == ReachKind.Handle && operation.Force.High > 0,
        OperationKind.Clean => kind.Water is not null && operation.Force.High > 0,
        _ => false,
    };

    private static IEnumerable<Measurement> Lengths(Aid kind)
    {
        if (kind.Length is not null)
        {
            string end = kind.Reach == ReachKind.Jet ? "nozzle" : "wiping face";
            yield return Length("Length", $"Hold a string along the middle of the aid, round its curve, from the middle of the grip to the middle of the {end}. Lay the string along the ruler.", "length");
        }

        if (kind.JetReach is not null)
        {
            yield return Jet();
        }

        if (kind.TipWidth is not null)
        {
            yield return Width();
        }

        if (kind.FoldedLength is not null)
        {
            yield return Folded();
        }
    }

    private static Measurement Length(string name, string how, string member) =>
        new(name, how, Ruler, Question(name, member), [member], StockRanges.Error(RulerError), 0);

    private static Measurement Jet() => Length("Reach of the jet", "Spray level over a basin. Measure from the nozzle to where the jet still hits as a jet.", "jetReach");

    private static Measurement Width() => Length("Width of the tip", "Put the paper on. Measure the head across at its widest place.", "tipWidth");

    private static Measurement Folded() => Length("Folded length", "Fold it or take it apart as for carrying. Measure the longest part.", "foldedLength");

    private static Measurement Reservoir() => new(
        "Reservoir", "Weigh it empty, then full. The extra grams are its millilitres.", Kitchen, Question("Reservoir", "reservoir"), ["water", "reservoir"], StockRanges.Error(KitchenError) / CubicMetreKilograms, StockRanges.Error("filling-share"));

    private static Measurement Mass() => new(
        "Mass", "Weigh it ready for use without water and without paper.", Kitchen, Question("Mass", "mass"), ["mass"], StockRanges.Error(KitchenError), 0);

    private static Measurement Girth() => new(
        "Girth of the head", "Wrap a strip of paper once round the head and mark where it meets. Lay the strip along the ruler.", Ruler, Question("Girth of the head", "headGirth"), ["paper", "headGirth"], StockRanges.Error(RulerError), 0);

    private static IEnumerable<Measurement> Water(WaterUse water)
    {
        if (water.Reservoir is not null)
        {
            yield return Reservoir();
        }

        yield return Flow(Gentle, "gentlest", "gentleFlow");
        yield return Flow(Strong, "strongest", "strongFlow");
    }

    private static Measurement Flow(string name, string strength, string member) => new(
        name, $"Spray into a cup for ten seconds at the {strength} setting. Weigh the water. A tenth of the grams is the flow in millilitres a second.", Kitchen, Question(name, "flow"), ["water", member], 0, StockRanges.Error("stop-watch-share"));

    private static Measurement Force(OperationKind kind)
    {
        var (name, what) = kind switch
        {
            OperationKind.Load => ("Force to load", "the part that must be moved to put paper on"),
            OperationKind.Release => ("Force to let go", "the lever or button that lets the paper go"),
            _ => ("Force to wash", "the lever, trigger or bottle that makes the water flow"),
        };
        return new(
            name, $"Hook the luggage scale to {what}. Pull slowly until it works and read the highest number.", Luggage, Question(name, "force"), ["operations", Core.Person.Words.Of(kind), "force"], StockRanges.Error("luggage-scale"), StockRanges.Error("luggage-scale-share"));
    }

    private static Measurement Price() => new(
        "Price", "What the clinic pays for one, in its own currency.", "the last bill", Question("Price", "price"), ["upkeep", "price"], 0, 0);

    private static QuantityQuestion Question(string name, string range) => StockRanges.Typed(range, char.ToLowerInvariant(name[0]) + name[1..]);
}
