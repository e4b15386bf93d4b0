using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Interview;

/// <summary>What numbers a question takes.</summary>
/// <param name="Units">Symbols of the units taken; the first is used when none is given.</param>
/// <param name="Low">Lowest plausible number, in the first unit.</param>
/// <param name="High">Highest plausible number, in the first unit.</param>
/// <param name="Basis">What kind of knowledge the range is.</param>
/// <param name="Source">Why it was chosen.</param>
/// <param name="Whole">True when only whole numbers make sense.</param>
/// <param name="Below">What is said of a number of 0 or more below the lowest, where it can be true: for whom this tool is not, and whom to ask; null where it cannot.</param>
public sealed record NumberSpec(ImmutableArray<string> Units, double Low, double High, Basis Basis, string Source, bool Whole = false, string? Below = null);
