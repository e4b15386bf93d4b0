using System.Collections.Immutable;

namespace ToiletAid.Core.Interview;

/// <summary>What numbers a question takes.</summary>
/// <param name="Units">Symbols of the units taken; the first is used when none is given.</param>
/// <param name="Low">Lowest plausible number, in the first unit.</param>
/// <param name="High">Highest plausible number, in the first unit.</param>
/// <param name="Whole">True when only whole numbers make sense.</param>
public sealed record NumberSpec(ImmutableArray<string> Units, double Low, double High, bool Whole = false);
