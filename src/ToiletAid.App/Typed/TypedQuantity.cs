using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Typed;

/// <summary>A number that somebody typed, understood.</summary>
/// <param name="Text">As typed, without spaces at the ends: printed again unchanged.</param>
/// <param name="Value">The number in <paramref name="Unit"/>; feet and inches become inches, stone and pounds become pounds.</param>
/// <param name="Unit">The unit it was given in.</param>
/// <param name="Si">The same in the SI unit of its dimension.</param>
public sealed record TypedQuantity(string Text, double Value, Unit Unit, double Si);
