using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Cost;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Ranking;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Advising;

/// <summary>The one door: from answers to advice. It keeps weightings that were drawn before, so one instance serves one thread.</summary>
public sealed class Advisor
{
    /// <summary>Persons drawn for the ranking.</summary>
    internal int ValueDraws => _settings.ValueDraws;

    /// <summary>Seed of every draw.</summary>
    internal ulong Seed => _settings.Seed;

    /// <summary>Persons drawn for a what-if: enough for a share in steps of about three in a hundred. Decision: what it finds is ranked in full before it is said.</summary>
    internal const int WhatIfDraws = 32;

    /// <summary>Persons drawn while questions are asked: enough for a share in steps of five in a hundred. Decision, for speed: only which question comes next depends on it.</summary>
    internal const int AskingDraws = 20;

    /// <summary>Sets of hidden traits that are weighed for people who would give the answers (decision).</summary>
    private const int LikelyTraits = 2048;

    /// <summary>From so many questions that were not asked, their answers are drawn as they go together; the few of a full visit are drawn one by one (decision).</summary>
    private const int ManyOpen = 12;

    /// <summary>Samples from which others are made by putting criteria in other places. There are few shapes, and drawing one takes longer than ranking.</summary>
    private const int ShapesKept = 16;

    private readonly KnowledgeBase _knowledge;
    private readonly AdviceSettings _settings;
    private readonly CriterionFunctions _functions;
    private readonly HazardTable _hazards;
    private readonly double _gain;
    private readonly Dictionary<PriorityOrder, WeightSample> _weights;
    private readonly List<WeightSample> _shapes;
    private readonly ReachMemory _reach;
    private readonly PlanLists _plans;
    private readonly Lazy<LikelyPeople> _people;
    private readonly Lazy<DrawnNumbers?> _numbers;
    private (Answers Known, ScreenedPlans Plans)? _last;

    /// <summary>The hazard table.</summary>
    internal HazardTable Hazards => _hazards;

    /// <summary>Makes an advisor.</summary>
    /// <param name="knowledge">Everything that is known beforehand.</param>
    /// <param name="settings">How advice is computed.</param>
    public Advisor(KnowledgeBase knowledge, AdviceSettings settings)
        : this(knowledge, settings, new(knowledge, settings), [], [])
    {
    }

    private Advisor(KnowledgeBase knowledge, AdviceSettings settings, ReachMemory reach, Dictionary<PriorityOrder, WeightSample> weights, List<WeightSample> shapes)
    {
        _knowledge = knowledge;
        _settings = settings;
        _functions = new(knowledge);
        _weights = weights;
        _shapes = shapes;
        _plans = new(knowledge.Catalogue, knowledge.Evidence);
        _gain = knowledge.Evidence.Value(EvidenceIds.PlansAddOnGain);
        _hazards = new(knowledge.Rules, knowledge.Questions, knowledge.Evidence);
        _reach = reach;
        _people = new(() => new(knowledge, new(knowledge.Questions), [.. knowledge.Questions.All.Select(q => q.Depths.Contains(Depth.Full))], LikelyTraits, settings.ValueDraws, settings.Seed));
        _numbers = new(() => settings.DrawsNumbers ? new(knowledge, settings.Seed) : null);
    }

    private Advisor(Advisor of, AidCatalogue catalogue)
    {
        _knowledge = of._knowledge with { Catalogue = catalogue };
        _settings = of._settings;
        _functions = new(_knowledge);
        _plans = new(catalogue, _knowledge.Evidence);
        _gain = of._gain;
        _hazards = of._hazards;
        _weights = of._weights;
        _shapes = of._shapes;
        _reach = of._reach;
        _people = of._people;
        _numbers = new(() => of._numbers.Value?.Under(_knowledge));
    }

    /// <summary>An advisor with another catalogue and other prices, which shares the reaches of this one: they depend on the person alone. Both
    /// serve one thread.</summary>
    /// <param name="catalogue">Kinds of aid and add-ons.</param>
    /// <param name="prices">What supplies cost.</param>
    public Advisor WithStock(AidCatalogue catalogue, Prices prices) => With(_knowledge with { Catalogue = catalogue, Prices = prices });

    /// <summary>An advisor over other knowledge, which shares the weightings of this one, and the reaches where bodies are the same. Both serve one thread.</summary>
    /// <param name="knowledge">Everything that is known beforehand.</param>
    internal Advisor With(KnowledgeBase knowledge)
    {
        var reach = ReferenceEquals(knowledge.Body, _knowledge.Body) ? _reach : new ReachMemory(knowledge, _settings);
        return new(knowledge, _settings, reach, _weights, _shapes);
    }

    /// <summary>An advisor that takes one kind as this article is, leaves out its other articles, and shares all that does not depend on it. Both serve one thread.</summary>
    /// <param name="article">The article, with the id of the kind that it stands for.</param>
    internal Advisor With(Aid article) => new(this, _knowledge.Catalogue.WithOnly(article.AsArticle()));

    /// <summary>Advice on these answers: red flags alone where there is one, else the plans in order.</summary>
    /// <param name="known">Answers as given, nothing assumed, and trials.</param>
    /// <exception cref="ArgumentException">Stature or mass lie outside what the body model takes.</exception>
    public Advice Advise(Answers known)
    {
        var advice = Rank(known);
        return _settings.AsksGrip ? advice with { Grip = GripDependence.Of(_knowledge, this, known) } : advice;
    }

    /// <summary>The same without what depends on a grip that was not measured, which takes two more rankings: for what-ifs.</summary>
    internal Advice Rank(Answers known)
    {
        var (order, stated) = Priorities.Of(known);
        var stops = Stops(known);
        if (!stops.IsEmpty)
        {
            return new() { Stops = stops, Ranked = [], RuledOut = [], Weights = [.. new WeightSet(order).Centroid], PrioritiesStated = stated };
        }

        var (hands, sample, offered, ruledOut) = Screened(known);
        var ranked = offered.Count == 0 ? [] : Ranking(hands, sample, Likely(known)).Rank(offered);
        return new()
        {
            Stops = [],
            Ranked = ranked,
            Held = ranked.IsEmpty ? 0 : _knowledge.People.Certainty.Shortlist.After(Asked(known)).Of(ranked[0].FirstShare),
            RuledOut = ruledOut,
            Weights = [.. sample.Set.Centroid],
            PrioritiesStated = stated,
            ForEveryPlan = OfThePerson(known, hands),
            Reach = hands.Appraiser.Reach,
        };
    }

    /// <summary>Full where what was asked is nearer to the budget of a full visit than to that of a quick one.</summary>
    private Depth Asked(Answers known) =>
        2 * known.Ids.Count() > _knowledge.Evidence.Value(EvidenceIds.PlannerBudget[Depth.Quick]) + _knowledge.Evidence.Value(EvidenceIds.PlannerBudget[Depth.Full]) ? Depth.Full : Depth.Quick;

    /// <summary>What the built-in values expect of a plan, whatever the clinic learnt: so that it can learn from what comes out.</summary>
    /// <param name="known">Answers as given, and what was tried until then.</param>
    /// <param name="plan">The plan.</param>
    public TrialPrediction Predict(Answers known, Plan plan)
    {
        var builtIn = _knowledge with { Clinic = null };
        return PlanSpread.Expected(builtIn, Appraise(builtIn, known, _settings.ValueDraws), plan, _settings.Seed, _settings.ValueDraws, Likely(known));
    }

    /// <summary>The plan that <see cref="Advise"/> puts first, without how sure that is; null when none can be offered.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="butForGrip">The same for a person of whom only the grip may differ; null where there is none.</param>
    internal Plan? First(Answers known, ScreenedPlans? butForGrip = null) =>
        FirstOf(known, butForGrip is null ? Screened(known) : Screen(known, butForGrip, whatIsRuledOut: false));

    /// <summary>The plan that <see cref="Advise"/> puts first, and nothing else, which takes a part of the time; null where a red flag stops everything or none can be offered.</summary>
    /// <param name="known">Answers as given.</param>
    public Plan? FirstOffered(Answers known) => Stops(known).IsEmpty ? FirstOf(known, Screen(known, null, whatIsRuledOut: false)) : null;

    private Plan? FirstOf(Answers known, ScreenedPlans plans) =>
        plans.Offered.Count == 0 ? null : Ranking(plans.Hands, plans.Weights, Likely(known)).First(plans.Offered);

    /// <summary>Questions whose answers, as far as they are not known, may rule out the plan that comes first.</summary>
    internal IEnumerable<QuestionId> FirstWaitsFor(Answers known)
    {
        if (First(known) is not { } first)
        {
            return [];
        }

        var offer = Screened(known).Offered.First(o => ReferenceEquals(o.Plan, first));
        var context = new RuleContext(_knowledge, known, offer.Plan, offer.Demands);
        return offer.Unclear.Where(r => !r.DependsOnHand).SelectMany(r => r.Check(context).Needs).Distinct();
    }

    /// <summary>Expected value of the best plan of each method, by id of the method; methods that are ruled out are missing. Empty when a red flag stops everything.</summary>
    internal Dictionary<string, double> Expected(Answers known)
    {
        if (!Stops(known).IsEmpty)
        {
            return [];
        }

        var (hands, sample, offered, _) = Screened(known);
        double[] values = offered.Count == 0 ? [] : Ranking(hands, sample, Likely(known)).Expected(offered);
        return offered.Select((o, i) => (Id: o.Plan.Aid.KindId, Value: values[i])).ToDictionary(p => p.Id, p => p.Value, StringComparer.Ordinal);
    }

    /// <summary>What is offered on these answers and what is not. Ranking and asking on look at the same answers one after the other, so
    /// the last is kept.</summary>
    /// <param name="known">Answers as given.</param>
    internal ScreenedPlans Screened(Answers known)
    {
        if (_last is null || !ReferenceEquals(_last.Value.Known, known))
        {
            _last = (known, Screen(known, null, whatIsRuledOut: true));
        }

        return _last.Value.Plans;
    }

    /// <summary>The same, worked out anew.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="butForGrip">The same for a person of whom only the grip may differ: what does not depend on it is not worked out again.</param>
    /// <param name="whatIsRuledOut">False where only what is offered is asked for: then the rest is not told in full.</param>
    private ScreenedPlans Screen(Answers known, ScreenedPlans? butForGrip, bool whatIsRuledOut)
    {
        var appraiser = Appraise(_knowledge, known, _settings.ValueDraws, butForGrip?.Appraiser);
        var sample = Weights(Priorities.Of(known).Order);
        var hands = Hands(appraiser, butForGrip?.Hands);
        var (offered, ruledOut) = Choose(hands, sample.Set, whatIsRuledOut: whatIsRuledOut);
        return new(hands, sample, offered, ruledOut);
    }

    /// <summary>Values plans on these answers.</summary>
    internal (Appraiser Appraiser, WeightSample Weights) Appraise(Answers known, int draws)
    {
        return (Appraise(_knowledge, known, draws), Weights(Priorities.Of(known).Order));
    }

    /// <summary>What ranks the plans that are offered, over these people.</summary>
    /// <param name="hands">What the hands can do besides, and what values plans.</param>
    /// <param name="weights">Weightings.</param>
    /// <param name="people">People who would give the answers; null to draw what is not known by itself.</param>
    internal PlanRanking Ranking(HandTasks hands, WeightSample weights, Answers[]? people) => new(_knowledge, _hazards, _settings, hands, weights, people);

    private Appraiser Appraise(KnowledgeBase knowledge, Answers known, int draws, Appraiser? butForGrip = null)
    {
        var untried = new Appraiser(knowledge, known, butForGrip?.Reach ?? _reach.Of(known, draws), _functions, butForGrip) { Numbers = _numbers };
        return known.Trials.IsEmpty ? untried
            : untried with { Tried = TrialEvidence.Of(knowledge, known.Trials, plan => PlanSpread.Of(knowledge, untried, plan, _settings.Seed, draws)) };
    }

    /// <summary>People who would give these answers, where many questions were not asked; null otherwise. An answer that is not known,
    /// though it was asked for, is drawn by itself.</summary>
    internal Answers[]? Likely(Answers known)
    {
        // Who was not asked the opening questions was not interviewed in this way: there is too little that other answers could go with.
        var open = OpenQuestions.Open(_knowledge.Questions, Depth.Full, known);
        if (open.Length < ManyOpen || open.Any(q => q.Opening))
        {
            return null;
        }

        return _people.Value.Evenly(known);
    }

    private WeightSample Weights(PriorityOrder order)
    {
        if (!_weights.TryGetValue(order, out var sample))
        {
            if (_weights.Count >= _settings.WeightingsKept)
            {
                _weights.Clear();
            }

            // Many people order different criteria in the same shape, and drawing takes many times as long as putting others in their places.
            var set = new WeightSet(order);
            sample = _shapes.Find(s => s.Set.HasShapeOf(set))?.For(order);
            if (sample is null)
            {
                sample = WeightSample.Draw(order, _settings.WeightDraws, _settings.Seed);
                if (_shapes.Count >= ShapesKept)
                {
                    _shapes.Clear();
                }

                _shapes.Add(sample);
            }

            _weights[order] = sample;
        }

        return sample;
    }

    /// <summary>Red flags among the answers: while there is one, nothing is ranked.</summary>
    /// <param name="known">Answers as given.</param>
    /// <returns>One for each, in the order of the hazard table; empty when there is none or when it is not known.</returns>
    public ImmutableArray<Finding> Stops(Answers known)
    {
        var context = NoPlan(known);
        return [.. _hazards.Stops.Where(s => s.Check(context).Applies == true).Select(s => new Finding(s.Rule, []))];
    }

    /// <summary>Questions whose answers, as far as they are not known, may be a red flag.</summary>
    internal IEnumerable<QuestionId> StopsWaitFor(Answers known)
    {
        var context = NoPlan(known);
        return _hazards.Stops.SelectMany(s => s.Check(context).Needs).Distinct();
    }

    private ImmutableArray<Finding> OfThePerson(Answers known, HandTasks hands)
    {
        var context = NoPlan(known);
        return [.. _hazards.Cautions.Where(c => c.OfThePerson && c.Check(context).Applies == true).Select(c => new Finding(hands.Fit(c.Rule), [])).OrderBy(f => f.Rule.Severity)];
    }

    /// <summary>For rules that look at no plan: any will do.</summary>
    private RuleContext NoPlan(Answers known) => new(_knowledge, known, new() { Aid = _knowledge.Catalogue.Aids[0], AddOns = [], Posture = Posture.Seated }, new PlanDemands());

    /// <summary>The best plan of each method that nothing rules out, and what rules out the rest.</summary>
    /// <param name="hands">What the hands can do besides, and what values plans.</param>
    /// <param name="weights">Weightings.</param>
    /// <param name="kinds">Methods that are looked at; null for all.</param>
    /// <param name="plans">Plans that are looked at; null for all. A method of which none is left is neither offered nor ruled out.</param>
    /// <param name="whatIsRuledOut">False where only what is offered is asked for: then the rest is not told in full.</param>
    internal (List<Offer> Offered, ImmutableArray<RuledOutAid> RuledOut) Choose(
        HandTasks hands, WeightSet weights, Func<Aid, bool>? kinds = null, Func<Plan, bool>? plans = null, bool whatIsRuledOut = true)
    {
        var appraiser = hands.Appraiser;
        var plansOf = _plans.Of(appraiser.Known);
        var variants = new VariantChoice(_knowledge, _plans, hands, p => Worth(hands, p, weights));
        var offered = new List<Offer>();
        var ruledOut = ImmutableArray.CreateBuilder<RuledOutAid>();
        Func<Plan, bool>? stillPossible = whatIsRuledOut ? plans : p => !hands.IsRefused(p) && plans?.Invoke(p) != false;
        foreach (var kind in _knowledge.Catalogue.Aids.Where(a => kinds is null || kinds(a)).GroupBy(a => a.KindId, StringComparer.Ordinal))
        {
            // What is in the cupboard need not be bought: the kind as it usually is must be better by what an add-on must earn.
            var all = kind.Select(aid => Best(aid, plansOf(aid), hands, weights, variants, aid.Variants.IsEmpty ? stillPossible : plans, whatIsRuledOut)).ToList();
            var possible = all.Where(b => b.Offer is not null).OrderByDescending(b => b.Worth - (b.Aid.ArticleOf is null && all.Count > 1 ? _gain : 0)).ToList();
            if (possible.Count > 0)
            {
                offered.Add(possible[0].Offer! with { AlsoFits = [.. possible.Skip(1).Where(b => b.Aid.ArticleOf is not null).Select(b => b.Aid)] });
            }

            ruledOut.AddRange(all.Where(b => b.Offer is null && b.Closest is not null && (possible.Count == 0 || b.Aid.ArticleOf is not null)).Select(b => b.Closest!));
        }

        return (offered, ruledOut.ToImmutable());
    }

    /// <summary>The best plan of one kind or article, and its worth; without one, what rules out the plan that came closest.</summary>
    private (Aid Aid, Offer? Offer, double Worth, RuledOutAid? Closest) Best(Aid aid, PlanList list, HandTasks hands, WeightSet weights, VariantChoice variants, Func<Plan, bool>? plans, bool whatIsRuledOut)
    {
        var closest = default(RuledOutAid);
        (Offer Offer, double Worth)? best = null;
        var refused = new List<(Plan Plan, PlanCheck Check)>();
        bool? handWillDo = null;
        int[] order = ByValue(list, hands, weights, plans, out double[] worths);
        var checks = new PlanCheck?[worths.Length];

        // With as many reasons as the closest has, a plan is no closer; variants ask for which reasons all of them are forbidden.
        PlanCheck Check(int i) => checks[i] ??= PlanCheck.Of(
            _knowledge, hands, list.Plans[i], !aid.Variants.IsEmpty ? int.MaxValue : !whatIsRuledOut ? 1 : closest?.Reasons.Length ?? int.MaxValue);
        foreach (int i in order)
        {
            var plan = list.Plans[i];

            // A second tool is advised only where the own hand cannot do what is left.
            if (plan.TakesTwoTools && (handWillDo ??= Array.Exists(order, o => list.Plans[o].Companion?.Reach == ReachKind.BareHand && Check(o).Reasons.IsEmpty)))
            {
                continue;
            }

            var check = Check(i);
            if (check.Reasons.IsEmpty)
            {
                best = (new(plan, check.Demands, check.Unclear), worths[i]);
                break;
            }

            refused.Add((plan, check));
            if (closest is null || check.Reasons.Length < closest.Reasons.Length)
            {
                closest = new(aid, plan, check.Reasons);
            }
        }

        best = (aid.Variants.IsEmpty ? null : variants.Better(aid, refused, best, closest)) ?? best;
        return (aid, best?.Offer, best?.Worth ?? 0, closest);
    }

    /// <summary>Places of the plans of a method that are looked at, best first. An add-on that only helps must earn its place, so that nobody is handed things for nothing.</summary>
    private int[] ByValue(PlanList list, HandTasks hands, WeightSet weights, Func<Plan, bool>? looked, out double[] worths)
    {
        double[] values = new double[list.Plans.Length];
        var order = new List<int>(values.Length);
        for (int i = 0; i < values.Length; i++)
        {
            if (looked is null || looked(list.Plans[i]))
            {
                values[i] = Worth(hands, list.Plans[i], weights);
                order.Add(i);
            }
        }

        int[] sorted = [.. order];
        list.Sort(sorted, values);
        worths = values;
        return sorted;
    }

    /// <summary>What the person's own hands can do besides a plan.</summary>
    /// <param name="appraiser">Values plans.</param>
    /// <param name="butForGrip">The same for a person of whom only the grip may differ; null where there is none.</param>
    internal HandTasks Hands(Appraiser appraiser, HandTasks? butForGrip = null) => new(_knowledge, _hazards, appraiser, butForGrip);

    /// <summary>Worth in the middle case less what add-ons that only help must earn.</summary>
    private double Worth(HandTasks hands, Plan plan, WeightSet weights) => OfMiddle(hands, plan, weights) - (_gain * Helping(plan));

    /// <summary>Add-ons of a plan that only help.</summary>
    private static int Helping(Plan plan)
    {
        int helping = 0;
        foreach (var addOn in plan.AddOns)
        {
            helping += addOn.OnlyHelps ? 1 : 0;
        }

        return helping;
    }

    /// <summary>Worth in the middle case, in which reach is a probability: where the cleaning method does not get to the skin the rest is worth nothing.</summary>
    private static double OfMiddle(HandTasks hands, Plan plan, WeightSet weights)
    {
        Span<double> values = stackalloc double[Criteria.Count];
        hands.Values(plan, hands.Appraiser.Middle, values);
        double ofReach = weights.Centroid[(int)Criterion.Reach] * values[(int)Criterion.Reach];
        return ofReach + (hands.Appraiser.Arrives(plan, values, hands.Appraiser.Middle) * (ExpectedValues.WeightedSum(values, weights.Centroid) - ofReach));
    }
}
