namespace ToiletAid.App.Files;

/// <summary>One range of <see cref="RangesFile"/> for a number that a person types.</summary>
/// <param name="Units">Symbols of the units that are taken, the usual one first.</param>
/// <param name="Low">Lowest value that makes sense, in the first unit, included.</param>
/// <param name="High">Highest value that makes sense, in the first unit, included.</param>
internal sealed record RangesFileTyped(string[] Units, double Low, double High);
