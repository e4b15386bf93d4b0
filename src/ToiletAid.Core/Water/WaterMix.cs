namespace ToiletAid.Core.Water;

/// <summary>How to mix hot and cold water to a temperature.</summary>
public sealed record WaterMix
{
    // More parts than these are not measured out at a basin.
    private const int MostParts = 8;
    private const double Rounding = 1e-9;

    /// <summary>Hot water, m³.</summary>
    public required double HotCubicMetres { get; init; }

    /// <summary>Cold water, m³.</summary>
    public required double ColdCubicMetres { get; init; }

    /// <summary>Temperature of the mixture, °C.</summary>
    public required double Celsius { get; init; }

    /// <summary>The same in whole parts, rounded so that it is never warmer.</summary>
    public required PartsOfWater Parts { get; init; }

    /// <summary>True when the wish was above the limit and was lowered to it.</summary>
    public required bool IsLoweredToLimit { get; init; }

    /// <summary>True when the supplies cannot give the temperature: the hot one is too cool or the cold one too warm.</summary>
    public required bool IsOutOfReach { get; init; }

    /// <summary>True when even cold water alone is above the limit: it must not be used.</summary>
    public required bool IsAboveLimit { get; init; }

    /// <summary>Works out a mixture by heat balance: both waters have the same heat capacity, and nothing is lost.</summary>
    /// <param name="wishCelsius">Temperature wished for, °C, 0 to 100.</param>
    /// <param name="limitCelsius">Warmest that is allowed, °C, 0 to 100, from <see cref="WaterCoefficients.LimitCelsius"/>.</param>
    /// <param name="hotCelsius">Hot supply, °C, 0 to 100; not below the cold one.</param>
    /// <param name="coldCelsius">Cold supply, °C, 0 to 100.</param>
    /// <param name="cubicMetres">Volume wanted, m³; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature or the volume is out of range.</exception>
    /// <remarks>Water kept warm in a cold vessel ends up cooler, never warmer, so the balance errs to the safe side.</remarks>
    public static WaterMix Of(double wishCelsius, double limitCelsius, double hotCelsius, double coldCelsius, double cubicMetres)
    {
        Check(wishCelsius, nameof(wishCelsius), 0, 100);
        Check(limitCelsius, nameof(limitCelsius), 0, 100);
        Check(coldCelsius, nameof(coldCelsius), 0, 100);
        Check(hotCelsius, nameof(hotCelsius), coldCelsius, 100);
        Check(cubicMetres, nameof(cubicMetres), 0, double.MaxValue);
        double target = Math.Min(wishCelsius, limitCelsius);
        double share = hotCelsius > coldCelsius ? Math.Clamp((target - coldCelsius) / (hotCelsius - coldCelsius), 0, 1) : 0;
        double celsius = coldCelsius + (share * (hotCelsius - coldCelsius));
        return new()
        {
            HotCubicMetres = share * cubicMetres,
            ColdCubicMetres = (1 - share) * cubicMetres,
            Celsius = celsius,
            Parts = InParts(share, hotCelsius, coldCelsius),
            IsLoweredToLimit = wishCelsius > limitCelsius,
            IsOutOfReach = Math.Abs(celsius - target) > 1e-6,
            IsAboveLimit = celsius > limitCelsius + 1e-6,
        };
    }

    private static PartsOfWater InParts(double share, double hotCelsius, double coldCelsius)
    {
        int hot = 0, cold = 1;
        for (int total = 1; total <= MostParts; total++)
        {
            int h = (int)Math.Floor((share * total) + Rounding);
            if (h * (hot + cold) > hot * total)
            {
                (hot, cold) = (h, total - h);
            }
        }

        double celsius = ((hot * hotCelsius) + (cold * coldCelsius)) / (hot + cold);
        return new(hot, cold, celsius);
    }

    private static void Check(double value, string name, double low, double high)
    {
        if (!(value >= low && value <= high))
        {
            throw new ArgumentOutOfRangeException(name, value, $"not from {low} to {high}");
        }
    }
}
