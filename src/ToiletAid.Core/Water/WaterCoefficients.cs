using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Water;

/// <summary>The numbers that the use of water rests on, taken from the evidence by id; a missing one fails at once.</summary>
/// <param name="table">Evidence with every entry that starts with "water.".</param>
/// <param name="burns">Time to a burn.</param>
/// <exception cref="KeyNotFoundException">An entry is missing.</exception>
public sealed class WaterCoefficients(NumberTable table, BurnTable burns)
{
    private readonly double _bidetLimit = table.Value("water.bidet-limit");
    private readonly double _poorFeelingLimit = table.Value("water.poor-feeling-limit");

    /// <summary>Time to a burn by temperature.</summary>
    public BurnTable Burns { get; } = burns;

    /// <summary>Usual target, °C.</summary>
    public double UsualTargetCelsius { get; } = table.Value("water.usual-target");

    /// <summary>Cold water at the tap, °C, until it is measured.</summary>
    public double ColdSupplyCelsius { get; } = table.Value("water.cold-supply");

    /// <summary>Hot water at the tap, °C, until it is measured.</summary>
    public double HotSupplyCelsius { get; } = table.Value("water.hot-supply");

    /// <summary>The warmest water that may be used for washing, °C.</summary>
    /// <param name="burnsSooner">True when the skin that is washed is old or feels poorly, or the hand that tests does.</param>
    public double LimitCelsius(bool burnsSooner) => burnsSooner ? Math.Min(_poorFeelingLimit, _bidetLimit) : _bidetLimit;
}
