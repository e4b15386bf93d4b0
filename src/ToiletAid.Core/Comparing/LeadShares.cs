using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Comparing;

/// <summary>Divides the change of a lead over the answers that changed.</summary>
/// <remarks>Every mixture of earlier and later answers is valued with the same drawn persons, so that no share is noise of the draws.
/// Fewer than <see cref="MostExact"/> changed answers are movers each; more are taken together by topic. What was tried in between is a mover of its
/// own. Up to <see cref="MostExact"/> movers every order counts, and above that orders are sampled.</remarks>
internal static class LeadShares
{
    /// <summary>1,024 mixtures, each of which is ranked. Decision: one mover more would double the work.</summary>
    internal const int MostExact = 10;

    /// <summary>Orders drawn, each used forwards and backwards. Decision: the shares add up to the change whatever their number.</summary>
    private const int SampledOrders = 100;

    private const ulong Seed = 0x4C45_4144;

    internal static LeadChange Of(KnowledgeBase knowledge, Advisor advisor, Answers from, Answers to, ImmutableArray<QuestionId> changed, Aid one, Aid other)
    {
        var movers = Movers(knowledge, changed);
        if (to.Trials.Length != from.Trials.Length)
        {
            movers = movers.Add(new([], null, 0, IsTrials: true));
        }

        var known = new Dictionary<ulong, double>();
        bool sampled = movers.Length > MostExact;
        double[] shares = sampled ? ShapleyShares.Sampled(movers.Length, Lead, SampledOrders, Seed) : ShapleyShares.Exact(movers.Length, Lead);
        return new(
            one,
            other,
            Lead(0),
            Lead((1UL << movers.Length) - 1),
            [.. movers.Select((m, i) => m with { Share = shares[i] }).OrderByDescending(m => Math.Abs(m.Share))],
            sampled);

        double Lead(ulong set)
        {
            if (!known.TryGetValue(set, out double lead))
            {
                var mixed = from;
                for (int i = 0; i < movers.Length; i++)
                {
                    mixed = (set >> i & 1) != 0 ? movers[i].In(mixed, to) : mixed;
                }

                var values = advisor.Expected(mixed);
                known[set] = lead = values.GetValueOrDefault(one.Id) - values.GetValueOrDefault(other.Id);
            }

            return lead;
        }
    }

    private static ImmutableArray<Mover> Movers(KnowledgeBase knowledge, ImmutableArray<QuestionId> changed) => changed.Length < MostExact
        ? [.. changed.Select(q => new Mover([q], null, 0))]
        : [.. changed.GroupBy(q => knowledge.Questions[q].Topic, StringComparer.Ordinal).Select(t => new Mover([.. t], t.Key, 0))];
}
