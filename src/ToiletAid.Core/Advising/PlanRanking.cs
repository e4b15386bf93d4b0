using System.Collections.Immutable;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Ranking;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Advising;

/// <summary>Puts the offered plans in order, over all weightings that the priorities allow and all persons that the answers allow.</summary>
internal sealed class PlanRanking(KnowledgeBase knowledge, HazardTable hazards, AdviceSettings settings, Appraiser appraiser, WeightSample weights, Answers[]? people = null)
{
    internal const ulong StrengthStream = 0x4752_4950;

    /// <summary>The plan that <see cref="Rank"/> puts first, without the sampling of weightings.</summary>
    internal Plan First(List<Offer> offers) => offers[Order(offers, Expected(offers)).First()].Plan;

    /// <summary>Expected values of the plans, in the order of the offers.</summary>
    internal double[] Expected(List<Offer> offers) => ExpectedValues.Of(Draw(offers), weights.Set);

    internal ImmutableArray<RankedPlan> Rank(List<Offer> offers)
    {
        var values = Draw(offers);
        double[] expected = ExpectedValues.Of(values, weights.Set);
        double[] means = values.Means();
        var acceptability = Acceptability.Of(values, weights);
        double[] ofWeightings = FirstRank.Shares(CriterionValues.Of(offers.Count, Criteria.Count, 1, means), weights);
        double[] usable = [.. offers.Select((o, i) => knowledge.Clinic?.Works(o.Plan.Aid.Id, values.WorthShare(i)) ?? values.WorthShare(i))];
        int[] order = [.. Order(offers, expected)];
        var ranked = ImmutableArray.CreateBuilder<RankedPlan>(offers.Count);
        for (int rank = 0; rank < order.Length; rank++)
        {
            int i = order[rank];
            int? other = rank + 1 < order.Length ? order[rank + 1] : rank > 0 ? order[rank - 1] : null;
            var (cautions, unsettled) = Findings(offers[i]);
            ranked.Add(new()
            {
                Rank = rank + 1,
                Plan = offers[i].Plan,
                Value = expected[i],
                Criteria = [.. Mean(means, i)],
                FirstOfWeightings = ofWeightings[i],
                FirstShare = acceptability.FirstRankShare(i),
                RankShares = [.. Enumerable.Range(0, offers.Count).Select(r => acceptability.RankShare(i, r))],
                Confidence = acceptability.ConfidenceFactors[i],
                CentralWeights = acceptability.CentralWeights[i],
                BeatenBy = BeatenBy(means, order, rank) is { } b ? offers[b].Plan : null,
                Demands = offers[i].Demands,
                UsableShare = usable[i],
                OtherUsableShare = other is { } u ? usable[u] : 1,
                Setup = Setup(offers[i].Plan),
                Reasons = other is { } o ? Reasons(values, means, usable, i, o) : [],
                ComparedWith = other is { } c ? offers[c].Plan : null,
                Cautions = cautions,
                Tried = [.. appraiser.Known.Trials.Where(t => t.Trial.Plan.Aid == offers[i].Plan.Aid.Id)],
                Unsettled = unsettled,
            });
        }

        return ranked.MoveToImmutable();
    }

    private static IEnumerable<int> Order(List<Offer> offers, double[] expected) =>
        Enumerable.Range(0, offers.Count).OrderByDescending(i => expected[i]).ThenBy(i => offers[i].Plan.Key, StringComparer.Ordinal);

    /// <summary>Values of every plan for every drawn person; a plan that one of them cannot use is worth nothing to them.</summary>
    private CriterionValues Draw(List<Offer> offers)
    {
        var values = new CriterionValues(offers.Count, Criteria.Count, settings.ValueDraws);
        var strength = new RandomDraws(settings.Seed, StrengthStream);
        for (int draw = 0; draw < settings.ValueDraws; draw++)
        {
            var filled = people?[draw] ?? Assumptions.Draw(knowledge.Questions, appraiser.Known, settings.Seed, draw);
            var person = appraiser.DrawPerson(filled, strength.NextUniform(), draw);
            for (int i = 0; i < offers.Count; i++)
            {
                if (!IsUsable(knowledge, offers[i], filled))
                {
                    continue;
                }

                double[] plan = appraiser.Values(offers[i].Plan, person);
                for (int c = 0; c < Criteria.Count; c++)
                {
                    values[draw, i, c] = plan[c];
                }
            }
        }

        return values;
    }

    /// <summary>False when an answer that was not known turns out so that a rule forbids the plan.</summary>
    internal static bool IsUsable(KnowledgeBase knowledge, Offer offer, Answers filled)
    {
        if (offer.Unclear.IsEmpty)
        {
            return true;
        }

        var context = new RuleContext(knowledge, filled, offer.Plan, offer.Demands);
        return !offer.Unclear.Any(rule => !rule.HangsOnHand && rule.Check(context).Applies == true);
    }

    private (ImmutableArray<Finding> Cautions, ImmutableArray<string> Unsettled) Findings(Offer offer)
    {
        var context = new RuleContext(knowledge, appraiser.Known, offer.Plan, offer.Demands);
        var findings = new List<Finding>();
        var unsettled = offer.Unclear.SelectMany(r => r.Check(context).Needs).ToList();
        foreach (var rule in hazards.Cautions)
        {
            var outcome = rule.Check(context);
            if (outcome.Applies == true)
            {
                findings.Add(new(rule.Rule, outcome.Slots));
            }

            unsettled.AddRange(outcome.Needs);
        }

        return (
            [.. findings.OrderBy(f => f.Rule.Severity)],
            [.. unsettled.Distinct(StringComparer.Ordinal).Where(id => OpenQuestions.IsRelevant(knowledge.Questions[id], appraiser.Known))]);
    }

    private PlanSetup Setup(Plan plan) => PlanSetup.Of(
        knowledge, plan, appraiser.Middle.View.StoolType, appraiser.Middle.View.CleansPerDay, feelsHeatPoorly: HeatSense.MayBePoor(appraiser.Known));

    private ImmutableArray<Reason> Reasons(CriterionValues values, double[] means, double[] usable, int one, int other)
    {
        var lead = LeadContributions.Of(values, weights.Set, one, other);
        return
        [
            .. Enumerable.Range(0, Criteria.Count)
                .Select(c => new Reason((Criterion)c, lead.ByCriterion[c], Where(one, c), Where(other, c)))
                .OrderByDescending(r => r.Contribution),
        ];

        double Where(int plan, int criterion) => usable[plan] == 0 ? 0 : means[(plan * Criteria.Count) + criterion] / usable[plan];
    }

    private static ReadOnlySpan<double> Mean(double[] means, int plan) => means.AsSpan(plan * Criteria.Count, Criteria.Count);

    /// <summary>A better-placed plan that beats this one whatever the weights, or null.</summary>
    private int? BeatenBy(double[] means, int[] order, int rank)
    {
        for (int better = 0; better < rank; better++)
        {
            if (Dominance.Beats(weights.Set, Mean(means, order[better]), Mean(means, order[rank])))
            {
                return order[better];
            }
        }

        return null;
    }
}
