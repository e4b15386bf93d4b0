using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Calculators;

/// <summary>What the water calculator is asked.</summary>
public sealed record WaterSettings
{
    /// <summary>The aid's name, or null when only numbers were given.</summary>
    public string? Aid { get; init; }

    /// <summary>Water of the aid; flows may be the same.</summary>
    public required WaterUse Use { get; init; }

    /// <summary>True when the water for one clean is known; otherwise one filling is meant.</summary>
    public bool KnowsOneClean { get; init; }

    /// <summary>Mass without water, kg; null when not known.</summary>
    public double? EmptyKilograms { get; init; }

    /// <summary>Hot supply, °C; null for the usual one.</summary>
    public double? Hot { get; init; }

    /// <summary>Cold supply, °C; null for the usual one.</summary>
    public double? Cold { get; init; }

    /// <summary>Temperature wished for, °C; null for the usual one.</summary>
    public double? Target { get; init; }

    /// <summary>True when skin or hand is known to judge heat as usual.</summary>
    public bool FeelsHeat { get; init; }

    /// <summary>True when it was said how the skin feels; otherwise it is taken to feel poorly.</summary>
    public bool FeelingIsGiven { get; init; }
}
