using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Comparing;

/// <summary>Where a kind of aid stands at two visits.</summary>
/// <param name="Aid">The kind.</param>
/// <param name="Before">Its place at the earlier visit; null when it could not be offered.</param>
/// <param name="After">Its place at the later visit; null when it cannot be offered.</param>
public sealed record PlaceChange(Aid Aid, int? Before, int? After);
