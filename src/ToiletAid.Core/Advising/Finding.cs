using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Advising;

/// <summary>A rule that applies, with the numbers of the case.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Slots">Numbers and words for its sentence.</param>
public sealed record Finding(Rule Rule, ImmutableArray<Slot> Slots);
