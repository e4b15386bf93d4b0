using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Catalogue;

/// <summary>The water that an aid uses.</summary>
public sealed record WaterUse
{
    /// <summary>Mass of a cubic metre of water, kg: water is never heavier, so that what is held is not called lighter than it is.</summary>
    internal const double Density = 1000;

    /// <summary>Reservoir, m³; null when fed from the mains.</summary>
    public Sourced? Reservoir { get; init; }

    /// <summary>Flow at the gentle strength, m³/s.</summary>
    public required Sourced GentleFlow { get; init; }

    /// <summary>Flow at the strong strength, m³/s.</summary>
    public required Sourced StrongFlow { get; init; }

    /// <summary>Water for one clean, m³.</summary>
    public required Sourced PerClean { get; init; }

    /// <summary>True when the user chooses how warm the water is, so that a scald is possible.</summary>
    public bool CanBeWarm { get; init; }

    /// <summary>True when the aid itself limits the temperature.</summary>
    public bool LimitsTemperature { get; init; }

    /// <summary>True when it is connected to the building's water.</summary>
    public bool Plumbed { get; init; }

    /// <summary>True when it needs a protected socket.</summary>
    public bool NeedsSocket { get; init; }
}
