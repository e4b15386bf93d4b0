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
internal sealed class PlanRanking(KnowledgeBase knowledge, HazardTable hazards, AdviceSettings settings, HandTasks hands, WeightSample weights, Answers[]? people = null)
{
    internal const ulong StrengthStream = 0x4752_4950;

    /// <summary>The plan that <see cref="Rank"/> puts first, without anything else about the places.</summary>
    internal Plan First(List<Offer> offers)
    {
        if (offers.Count == 1)
        {
            return offers[0].Plan;
        }

        var values = Draw(offers);
        return offers[FirstRank.Leader(values, weights) ?? Order(offers, FirstRank.Shares(values, weights), ExpectedValues.Of(values, weights.Set)).First()].Plan;
    }

    /// <summary>Expected values of the plans, in the order of the offers.</summary>
    internal double[] Expected(List<Offer> offers) => ExpectedValues.Of(Draw(offers), weights.Set);

    /// <summary>Share of the persons who would give these answers that can use a plan at all, 0 to 1.</summary>
    internal double UsableShare(Offer offer) => Usable(offer, Draw([offer]), 0);

    internal ImmutableArray<RankedPlan> Rank(List<Offer> offers)
    {
        var values = Draw(offers);
        double[] expected = ExpectedValues.Of(values, weights.Set);
        double[] means = values.Means();
        var acceptability = Acceptability.Of(values, weights);
        double[] ofWeightings = FirstRank.Shares(CriterionValues.Of(offers.Count, Criteria.Count, 1, means), weights);
        double[] usable = [.. offers.Select((o, i) => Usable(o, values, i))];
        double[] shares = [.. Enumerable.Range(0, offers.Count).Select(acceptability.FirstRankShare)];
        bool[] beaten = [.. Enumerable.Range(0, offers.Count).Select(i => shares[i] == 0 && Enumerable.Range(0, offers.Count).Any(j => Beats(means, j, i)))];
        int[] order = [.. Order(offers, shares, expected, beaten)];
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
                Otherwise = offers[i].Otherwise,
                AlsoFits = offers[i].AlsoFits,
                Value = expected[i],
                Criteria = [.. Mean(means, i)],
                FirstOfWeightings = ofWeightings[i],
                FirstShare = shares[i],
                RankShares = [.. Enumerable.Range(0, offers.Count).Select(r => acceptability.RankShare(i, r))],
                Confidence = acceptability.ConfidenceFactors[i],
                CentralWeights = acceptability.CentralWeights[i],
                BeatenBy = beaten[i] ? offers[order.First(j => Beats(means, j, i))].Plan : null,
                Demands = offers[i].Demands,
                FoldsPaper = hands.Folds,
                HandHolds = hands.Holds,
                IsAlone = hands.Alone,
                HandPats = hands.Pats(offers[i].Plan.Posture),
                UsableShare = usable[i],
                OtherUsableShare = other is { } u ? usable[u] : 1,
                Setup = Setup(offers[i].Plan),
                Reasons = other is { } o ? Reasons(values, i, o) : [],
                ComparedWith = other is { } c ? offers[c].Plan : null,
                IsAhead = rank + 1 < order.Length,
                Cautions = cautions,
                Tried = [.. hands.Appraiser.Known.Trials.Where(t => knowledge.Catalogue.KindOf(t.Trial.Plan.Aid) == offers[i].Plan.Aid.KindId)],
                Unsettled = unsettled,
            });
        }

        return ranked.MoveToImmutable();
    }

    private double Usable(Offer offer, CriterionValues values, int at) =>
        knowledge.Clinic?.Works(offer.Plan.Aid.KindId, values.WorthShare(at)) ?? values.WorthShare(at);

    /// <summary>Best first: what is first for most people and priorities, for it is tried before it is bought, and what fails then is replaced by the
    /// next. Plans that are first as often, or never, stand by their expected value; those that are beaten whatever the weights stand last.</summary>
    private static IEnumerable<int> Order(List<Offer> offers, double[] firsts, double[] expected, bool[]? beaten = null) =>
        Enumerable.Range(0, offers.Count).OrderByDescending(i => firsts[i]).ThenBy(i => beaten?[i]).ThenByDescending(i => expected[i])
            .ThenBy(i => offers[i].Plan.Key, StringComparer.Ordinal);

    /// <summary>Values of every plan for every drawn person; a plan that one of them cannot use, or that does not get to the skin, is worth nothing to them.</summary>
    private CriterionValues Draw(List<Offer> offers)
    {
        var values = new CriterionValues(offers.Count, Criteria.Count, settings.ValueDraws);
        var strength = new RandomDraws(settings.Seed, StrengthStream);
        var drawn = hands.Appraiser.People(settings.Seed, people);
        double[] plan = new double[Criteria.Count];
        for (int draw = 0; draw < settings.ValueDraws; draw++)
        {
            var person = hands.Appraiser.DrawPerson(drawn[draw], strength.NextUniform());
            Answers? filled = null;
            for (int i = 0; i < offers.Count; i++)
            {
                if (!offers[i].Unclear.IsEmpty && !IsUsable(knowledge, offers[i], filled ??= hands.Appraiser.Filled(person.Case)))
                {
                    continue;
                }

                hands.Values(offers[i].Plan, person, plan);
                if (hands.Appraiser.Arrives(offers[i].Plan, plan, person) != 0)
                {
                    values.Set(draw, i, plan);
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
        return !offer.Unclear.Any(rule => !rule.DependsOnHand && rule.Check(context).Applies == true);
    }

    private (ImmutableArray<Finding> Cautions, ImmutableArray<QuestionId> Unsettled) Findings(Offer offer)
    {
        var context = new RuleContext(knowledge, hands.Appraiser.Known, offer.Plan, offer.Demands);
        var findings = new List<Finding>();
        var unsettled = offer.Unclear.SelectMany(r => r.Check(context).Needs).ToList();
        foreach (var rule in hazards.Cautions)
        {
            var outcome = rule.Check(context);
            if (outcome.Applies == true)
            {
                findings.Add(new(rule.OfThePerson ? hands.Fit(rule.Rule) : hands.Fit(rule.Rule, offer.Plan), outcome.Slots));
            }

            unsettled.AddRange(outcome.Needs);
        }

        return (
            [.. findings.OrderBy(f => f.Rule.Severity)],
            [.. unsettled.Distinct().Where(id => OpenQuestions.IsRelevant(knowledge.Questions[id], hands.Appraiser.Known))]);
    }

    private PlanSetup Setup(Plan plan) => PlanSetup.Of(
        knowledge, plan, hands.Appraiser.Middle.View.StoolType, hands.Appraiser.Middle.View.CleansPerDay, burnsSooner: HeatSense.BurnsSooner(hands.Appraiser.Known, knowledge.Evidence.Value(EvidenceIds.ScaldOld)));

    /// <summary>Among those who can use both: who cannot use one of them is told of by the shares of use.</summary>
    private ImmutableArray<Reason> Reasons(CriterionValues values, int one, int other)
    {
        var (mine, theirs) = values.MeansWhereBoth(one, other);
        var lead = LeadContributions.Of(weights.Set, mine, theirs);
        return [.. Enumerable.Range(0, Criteria.Count).Select(c => new Reason((Criterion)c, lead.ByCriterion[c], mine[c], theirs[c])).OrderByDescending(r => r.Contribution)];
    }

    private static ReadOnlySpan<double> Mean(double[] means, int plan) => means.AsSpan(plan * Criteria.Count, Criteria.Count);

    /// <summary>True when one plan is better than another whatever the weights.</summary>
    private bool Beats(double[] means, int one, int other) => one != other && Dominance.Beats(weights.Set, Mean(means, one), Mean(means, other));
}
