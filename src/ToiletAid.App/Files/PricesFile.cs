using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Files;

/// <summary>Prices of what is used up, in the shape of the file; what is left out keeps the built-in placeholder.</summary>
/// <param name="Roll">One roll of paper.</param>
/// <param name="Wipe">One moist wipe.</param>
/// <param name="WaterCubicMetre">One cubic metre of water with its drainage.</param>
internal sealed record PricesFile(Sourced? Roll = null, Sourced? Wipe = null, Sourced? WaterCubicMetre = null);
