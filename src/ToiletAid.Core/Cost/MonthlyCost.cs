using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Cost;

/// <summary>What a month costs, in the clinic's currency.</summary>
/// <param name="Parts">Parts that are not nought, in the order of their kind.</param>
public sealed record MonthlyCost(ImmutableArray<CostPart> Parts)
{
    /// <summary>Most plausible sum.</summary>
    public double Total => Parts.Sum(p => p.Value);

    /// <summary>Sum of the lower ends.</summary>
    public double Low => Parts.Sum(p => p.Low);

    /// <summary>Sum of the upper ends.</summary>
    public double High => Parts.Sum(p => p.High);

    /// <summary>True while any part rests on a price that the clinic has not set.</summary>
    public bool HasPlaceholder => Parts.Any(p => p.IsPlaceholder);

    /// <summary>Works out a month.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons used with it.</param>
    /// <param name="use">What is used up.</param>
    /// <param name="prices">Prices.</param>
    /// <exception cref="ArgumentException">An expected life is not above 0.</exception>
    public static MonthlyCost Of(Aid aid, ReadOnlySpan<AddOn> addOns, MonthlyUse use, Prices prices)
    {
        var purchase = Purchase(aid.Upkeep);
        var consumables = Priced(CostKind.Consumables, 1, aid.Upkeep.MonthlyConsumables);
        foreach (var addOn in addOns)
        {
            purchase = Sum(purchase, Purchase(addOn.Upkeep));
            consumables = Sum(consumables, Priced(CostKind.Consumables, 1, addOn.Upkeep.MonthlyConsumables));
        }

        ReadOnlySpan<CostPart> parts =
        [
            purchase,
            consumables,
            Priced(CostKind.Paper, use.Rolls, prices.Roll),
            Priced(CostKind.Wipes, use.Wipes, prices.Wipe),
            Priced(CostKind.Water, use.WaterCubicMetres, prices.WaterCubicMetre),
        ];
        return new([.. parts.ToArray().Where(p => p.High > 0)]);
    }

    /// <summary>Both together: a method and the companion that follows it. A kind of cost that both have is one part.</summary>
    public static MonthlyCost operator +(MonthlyCost first, MonthlyCost second) =>
        new([.. first.Parts.Concat(second.Parts).GroupBy(p => p.Kind).OrderBy(g => g.Key).Select(g => g.Aggregate(Sum))]);

    private static CostPart Purchase(Upkeep upkeep)
    {
        if (!(upkeep.LifeYears.Low > 0))
        {
            throw new ArgumentException("expected life must be above 0", nameof(upkeep));
        }

        var (price, life) = (upkeep.Price, upkeep.LifeYears);
        return new(
            CostKind.Purchase,
            price.Value / (life.Value * Calendar.MonthsInYear),
            price.Low / (life.High * Calendar.MonthsInYear),
            price.High / (life.Low * Calendar.MonthsInYear),
            price.Basis == Basis.Estimate && price.High > 0);
    }

    private static CostPart Priced(CostKind kind, double amount, Sourced price) =>
        new(kind, amount * price.Value, amount * price.Low, amount * price.High, amount > 0 && price.Basis == Basis.Estimate && price.High > 0);

    private static CostPart Sum(CostPart a, CostPart b) =>
        new(a.Kind, a.Value + b.Value, a.Low + b.Low, a.High + b.High, a.IsPlaceholder || b.IsPlaceholder);
}
