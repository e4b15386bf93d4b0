using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Cost;

/// <summary>What supplies cost, in the clinic's currency. A price is a placeholder while its basis is an estimate.</summary>
/// <param name="Roll">One roll of paper.</param>
/// <param name="Wipe">One moist wipe.</param>
/// <param name="WaterCubicMetre">One cubic metre of water with its drainage.</param>
public sealed record Prices(Sourced Roll, Sourced Wipe, Sourced WaterCubicMetre)
{
    /// <summary>The built-in placeholders.</summary>
    /// <param name="table">Evidence with every entry that starts with "cost.".</param>
    /// <exception cref="KeyNotFoundException">An entry is missing.</exception>
    public static Prices From(NumberTable table) => new(table["cost.roll"], table["cost.wipe"], table["cost.water-cubic-metre"]);

    /// <summary>A price that the clinic has set: no placeholder any more.</summary>
    /// <param name="amount">Amount, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="amount"/> is not 0 or more.</exception>
    public static Sourced Set(double amount) => amount >= 0 && double.IsFinite(amount)
        ? new(amount, amount, amount, Basis.Decision, "Set by the clinic.")
        : throw new ArgumentOutOfRangeException(nameof(amount), amount, "not 0 or more");
}
