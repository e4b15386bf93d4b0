using System.Collections.Immutable;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Ranking;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Advising;

/// <summary>What can be offered on some answers, before it is ranked.</summary>
/// <param name="Hands">What the person's own hands can do besides a plan, and what values plans.</param>
/// <param name="Weights">Weightings that the priorities allow.</param>
/// <param name="Offered">The best plan of each method that nothing rules out; not to be changed.</param>
/// <param name="RuledOut">The other methods, and why.</param>
internal sealed record ScreenedPlans(HandTasks Hands, WeightSample Weights, List<Offer> Offered, ImmutableArray<RuledOutAid> RuledOut)
{
    internal Appraiser Appraiser => Hands.Appraiser;
}
