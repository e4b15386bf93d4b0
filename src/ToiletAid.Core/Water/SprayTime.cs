using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Water;

/// <summary>How long an aid sprays, and what its water weighs.</summary>
public sealed record SprayTime
{
    /// <summary>Time for one clean at the gentle strength, s.</summary>
    public required double GentleSecondsPerClean { get; init; }

    /// <summary>Time for one clean at the strong strength, s.</summary>
    public required double StrongSecondsPerClean { get; init; }

    /// <summary>Time that one filling lasts at the gentle strength, s; null without a reservoir.</summary>
    public required double? GentleSecondsPerFilling { get; init; }

    /// <summary>Time that one filling lasts at the strong strength, s; null without a reservoir.</summary>
    public required double? StrongSecondsPerFilling { get; init; }

    /// <summary>How often the reservoir must be filled again during one clean; 0 without a reservoir.</summary>
    public required int RefillsPerClean { get; init; }

    /// <summary>Mass of the aid with a full reservoir, kg.</summary>
    public required double FullKilograms { get; init; }

    /// <summary>Works out an aid; null when it uses no water.</summary>
    /// <exception cref="ArgumentException">A flow or the reservoir is not above 0.</exception>
    public static SprayTime? Of(Aid aid) => aid.Water is { } water ? Of(water, aid.Mass.Value) : null;

    /// <summary>Works out the water of an aid.</summary>
    /// <param name="water">Its water.</param>
    /// <param name="emptyKilograms">Mass without water, kg; 0 or more.</param>
    /// <exception cref="ArgumentException">A flow or the reservoir is not above 0.</exception>
    public static SprayTime Of(WaterUse water, double emptyKilograms)
    {
        double gentle = Above0(water.GentleFlow.Value), strong = Above0(water.StrongFlow.Value), clean = water.PerClean.Value;
        double? filling = water.Reservoir is { } reservoir ? Above0(reservoir.Value) : null;
        return new()
        {
            GentleSecondsPerClean = clean / gentle,
            StrongSecondsPerClean = clean / strong,
            GentleSecondsPerFilling = filling / gentle,
            StrongSecondsPerFilling = filling / strong,
            RefillsPerClean = filling is { } f ? Math.Max((int)Math.Ceiling((clean / f) - 1e-9) - 1, 0) : 0,
            FullKilograms = emptyKilograms + (WaterUse.Density * (filling ?? 0)),
        };
    }

    private static double Above0(double value) =>
        value > 0 ? value : throw new ArgumentException("flow and reservoir must be above 0", nameof(value));
}
