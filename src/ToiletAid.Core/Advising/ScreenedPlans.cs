using System.Collections.Immutable;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Advising;

/// <summary>What can be offered on some answers, before it is ranked.</summary>
/// <param name="Appraiser">Values plans.</param>
/// <param name="Weights">Weightings that the priorities allow.</param>
/// <param name="Offered">The best plan of each method that nothing rules out; not to be changed.</param>
/// <param name="RuledOut">The other methods, and why.</param>
internal sealed record ScreenedPlans(Appraiser Appraiser, WeightSample Weights, List<Offer> Offered, ImmutableArray<RuledOutAid> RuledOut);
