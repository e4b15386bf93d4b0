namespace ToiletAid.Core.Cost;

/// <summary>What money is spent on.</summary>
public enum CostKind
{
    /// <summary>The aid and its add-ons, spread over their expected life.</summary>
    Purchase,

    /// <summary>Batteries and the like.</summary>
    Consumables,

    /// <summary>Paper.</summary>
    Paper,

    /// <summary>Moist wipes.</summary>
    Wipes,

    /// <summary>Water.</summary>
    Water,
}
