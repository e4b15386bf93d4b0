using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Ranking;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Asking;

/// <summary>What each kind of aid, in each posture and way, is worth to somebody whose answers are all known: the value of its best plan that no rule forbids.</summary>
/// <remarks>The same plans, values and rules as those of the ranking, in the middle case of reach and for a few strengths of the hand. What
/// depends on few answers is kept and found again by them.</remarks>
internal sealed class Worths
{
    /// <summary>Shares of weaker hands for which handling is worked out, each counting the same.</summary>
    private static readonly ImmutableArray<double> Strengths = [0.125, 0.375, 0.625, 0.875];

    /// <summary>Weightings for which kinds are compared, each with a draw of reach and a strength (decision).</summary>
    private const int Cases = 48;
    private static readonly int Postures = Enum.GetValues<Posture>().Length;
    private static readonly int Ways = Enum.GetValues<Approach>().Length + 1;

    private readonly KnowledgeBase _knowledge;
    private readonly CriterionFunctions _functions;
    private readonly ReachMemory _reach;
    private readonly int _draws;
    private readonly double _gain;
    private readonly Dictionary<string, int> _aids;
    private readonly int[] _kindOf;
    private readonly Dictionary<(string Aid, int Alternative), int> _reachPlaces = [];
    private readonly Dictionary<(int First, int Second), int> _reachPairs = [];
    private readonly RuleCheck[] _byAnswers;
    private readonly RuleCheck[] _byReach;
    private readonly RuleCheck[] _butForSkin;
    private readonly double _patted;
    private readonly bool?[] _pats = new bool?[Postures];
    private readonly AnswerMemo<Space> _spaces = new();
    private readonly Dictionary<string, ImmutableArray<AddOn>> _addOns = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, bool, bool, bool, bool), Space> _spacesByKey = [];
    private readonly Dictionary<(string Aid, string? Companion, string AddOns), Outfit> _outfits = [];
    private readonly List<Outfit> _all = [];
    private readonly Dictionary<(int Outfit, int Alternative), Entry> _entries = [];
    private readonly Dictionary<(string Aid, string AddOns), int> _parts = [];
    private readonly List<(Aid Aid, AddOn[] AddOns)> _partList = [];
    private readonly AnswerMemo<double[]>[] _criteria;
    private readonly AnswerMemo<HandClass> _hands = new();
    private readonly Dictionary<HandFacts, HandClass> _handsByFacts = [];
    private readonly AnswerMemo<ReachClass> _reaches = new();
    private readonly AnswerMemo<double[]> _weights = new();
    private readonly Dictionary<PriorityOrder, double[]> _weightsByOrder = [];
    private readonly AnswerMemo<WeightSample> _samples = new();
    private readonly Dictionary<PriorityOrder, WeightSample> _samplesByOrder = [];
    private readonly double[][] _values = new double[Criteria.OfThePlan.Length][];
    private readonly ulong _seed;
    private double[] _static = [];

    /// <summary>The hazard table.</summary>
    internal HazardTable Hazards { get; }

    internal Worths(KnowledgeBase knowledge, int draws, ulong seed)
    {
        Hazards = new(knowledge.Rules, knowledge.Questions, knowledge.Evidence);
        _byAnswers = [.. Hazards.RulesOut.Where(r => !r.DependsOnHand && !r.DependsOnReach)];
        _butForSkin = [.. _byAnswers.Where(r => !r.Questions.Contains(QuestionIds.Skin))];
        _patted = knowledge.Evidence.Value(EvidenceIds.IndependencePatted);
        _byReach = [.. Hazards.RulesOut.Where(r => r.DependsOnReach)];
        _knowledge = knowledge;
        _functions = new(knowledge);
        _draws = draws;
        _seed = seed;
        _reach = new(knowledge, new() { Seed = seed, ReachesKept = 4096 });
        _gain = knowledge.Evidence.Value(EvidenceIds.PlansAddOnGain);
        _aids = knowledge.Catalogue.Aids.Select((a, i) => KeyValuePair.Create(a.Id, i)).ToDictionary(StringComparer.Ordinal);
        _kindOf = [.. knowledge.Catalogue.Aids.Select(a => knowledge.Catalogue.Aids.IndexOf(knowledge.Catalogue.Aids.First(b => b.KindId == a.KindId)))];
        _criteria = [.. Criteria.OfThePlan.Select(_ => new AnswerMemo<double[]>())];
    }

    /// <summary>The kind of an alternative, by its place in the catalogue; that of an article is the place of its kind.</summary>
    private int KindOf(int alternative) => _kindOf[alternative / (Postures * Ways)];

    /// <summary>The number of an alternative: a kind in a posture and way.</summary>
    private int Alternative(Aid aid, Posture posture, Approach? approach) =>
        (((_aids[aid.Id] * Postures) + (int)posture) * Ways) + (approach is { } a ? (int)a : Ways - 1);

    /// <summary>The plan that an alternative has for a person, and what it asks for; what it asks of the hand is left out.</summary>
    internal (Plan Plan, PlanDemands Demands) Chosen(LikelyPerson person, int alternative)
    {
        var (space, weights, hand, reach) = Ready(person);
        var (_, entry) = Best(person, space, space.Groups.First(g => g.Alternative == alternative), hand, reach, weights);
        return (entry!.Plan, reach.Appraiser.ReachDemands(entry.Plan));
    }

    /// <summary>What the best alternative of each kind is worth to a person, and which it is; 0 where rules forbid all or the person has no such posture.</summary>
    /// <param name="person">The person.</param>
    /// <param name="worths">Receives them, for each kind by its place in the catalogue.</param>
    /// <param name="firsts">Receives in how many of the cases that are looked at each kind comes first, by its best plan: a share.</param>
    internal void Of(LikelyPerson person, Span<(double Worth, int Alternative)> worths, Span<double> firsts)
    {
        firsts.Clear();
        var (space, weights, hand, reach) = Ready(person);
        var bests = new (double Worth, Entry? Entry)[firsts.Length];
        foreach (var (group, most) in space.Groups.Select(g => (Group: g, Most: Most(person, space, g, hand, reach, weights))).OrderByDescending(g => g.Most))
        {
            // Rules are looked at only for what may still be the best of its kind.
            ref var kind = ref bests[KindOf(group.Alternative)];
            if (kind.Entry is not null && most < kind.Worth)
            {
                continue;
            }

            var best = Best(person, space, group, hand, reach, weights);
            kind = best.Entry is not null && (kind.Entry is null || best.Worth > kind.Worth || (best.Worth == kind.Worth && best.Entry.Alternative < kind.Entry.Alternative)) ? best : kind;
        }

        for (int k = 0; k < worths.Length; k++)
        {
            worths[k] = (bests[k].Worth, bests[k].Entry?.Alternative ?? -1);
        }

        Firsts(person, space, bests, hand, reach, firsts);
    }

    /// <summary>The most that a group can be worth, whatever rules forbid of it.</summary>
    private double Most(LikelyPerson person, Space space, Group group, HandClass hand, ReachClass reach, double[] weights)
    {
        double most = double.NegativeInfinity;
        foreach (var entry in group.Entries)
        {
            most = Math.Max(most, Net(person, space, entry, hand, reach, weights) + (_gain * entry.Outfit.Helps));
            foreach (var varied in entry.Variants)
            {
                most = Math.Max(most, Net(person, space, varied, hand, reach, weights) + (_gain * varied.Outfit.Helps));
            }
        }

        return most;
    }

    private void Firsts(LikelyPerson person, Space space, (double Worth, Entry? Entry)[] bests, HandClass hand, ReachClass reach, Span<double> firsts)
    {
        var sample = _samples.Find(person, person.Codes, p => p.Answers, SampleOf).Value!;
        Span<double> values = stackalloc double[Criteria.Count], most = stackalloc double[Cases];
        Span<int> first = stackalloc int[Cases];
        first.Fill(-1);
        for (int kind = 0; kind < bests.Length; kind++)
        {
            if (bests[kind].Entry is not { } entry)
            {
                continue;
            }

            for (int c = 0; c < _criteria.Length; c++)
            {
                values[(int)Criteria.OfThePlan[c]] = _values[c][entry.Outfit.Index];
            }

            values[(int)Criterion.Independence] -= LostByPatting(person, space, entry, hand, reach);

            bool[] main = Reaches(reach, entry, entry.ReachPlace, entry.Outfit.Plan.Aid);
            bool[] companion = entry.Outfit.Plan.Companion is { } second ? Reaches(reach, entry, entry.SecondReachPlace, second) : main;
            for (int i = 0; i < Cases; i++)
            {
                int draw = i % main.Length;
                double handling = HandlingAt(hand, entry.Outfit, (i + (i / main.Length)) % Strengths.Length);
                if (handling == 0 || !main[draw])
                {
                    continue;
                }

                var weights = sample[i];
                values[(int)Criterion.Reach] = Learnt(entry.Outfit, Criterion.Reach, companion[draw] ? 1 : 0);
                values[(int)Criterion.Handling] = Learnt(entry.Outfit, Criterion.Handling, handling);
                double value = 0;
                for (int c = 0; c < values.Length; c++)
                {
                    value += weights[c] * values[c];
                }

                (most[i], first[i]) = value > most[i] ? (value, kind) : (most[i], first[i]);
            }
        }

        foreach (int kind in first)
        {
            if (kind >= 0)
            {
                firsts[kind] += 1.0 / Cases;
            }
        }
    }

    private bool[] Reaches(ReachClass reach, Entry entry, int place, Aid aid) => reach.Draws.Has(place, out bool[] draws)
        ? draws
        : reach.Draws.Keep(place, [.. Enumerable.Range(0, Math.Max(1, _draws)).Select(d => reach.Appraiser.ReachShare(aid, entry.Plan, d) > 0)]);

    /// <summary>Where the reach of a method in a posture and way is kept: of a variant apart from that of its kind.</summary>
    private int ReachPlace(Aid aid, Plan plan) => Number(_reachPlaces, (aid.Key, Alternative(aid, plan.Posture, plan.Approach)));

    private static int Number<T>(Dictionary<T, int> numbers, T of)
        where T : notnull
    {
        ref int number = ref CollectionsMarshal.GetValueRefOrAddDefault(numbers, of, out bool known);
        return known ? number : number = numbers.Count - 1;
    }

    private double HandlingAt(HandClass hand, Outfit outfit, int strength)
    {
        if (outfit.IsHelped)
        {
            return _knowledge.Hand.Coefficients.Helped;
        }

        double value = hand.Part(this, outfit.Main).Values[strength];
        return outfit.Second < 0 ? value : Math.Min(value, hand.Part(this, outfit.Second).Values[strength]);
    }

    /// <summary>A value of a method after what the clinic learnt of it.</summary>
    private double Learnt(Outfit outfit, Criterion criterion, double value) => _knowledge.Clinic?.Apply(outfit.Plan.Aid.KindId, criterion, value) ?? value;

    private WeightSample SampleOf(Answers answers)
    {
        var order = Priorities.Of(answers).Order;
        if (!_samplesByOrder.TryGetValue(order, out var sample))
        {
            _samplesByOrder[order] = sample = WeightSample.Draw(order, Cases, _seed);
        }

        return sample;
    }

    private (Space Space, double[] Weights, HandClass Hand, ReachClass Reach) Ready(LikelyPerson person)
    {
        var space = _spaces.Find(person, person.Codes, p => p.Answers, Plans).Value!;
        double[] weights = _weights.Find(person, person.Codes, p => p.Answers, WeightsOf).Value!;
        var hand = _hands.Find(person, person.Codes, p => p.Filled, HandOf).Value!;
        var reach = _reaches.Find(person, person.ReachCodes, p => p.ForReach, a => new ReachClass(new(_knowledge, person.ForReach, _reach.Of(a, _draws), _functions))).Value!;
        Static(person, weights, space);
        Array.Clear(_pats);
        return (space, weights, hand, reach);
    }

    private (double Worth, Entry? Entry) Best(LikelyPerson person, Space space, Group group, HandClass hand, ReachClass reach, double[] weights)
    {
        Span<double> values = stackalloc double[group.Entries.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = Net(person, space, group.Entries[i], hand, reach, weights);
        }

        Entry? refused = null;
        while (true)
        {
            int best = -1;
            for (int i = 0; i < values.Length; i++)
            {
                best = values[i] > double.NegativeInfinity && (best < 0 || values[i] > values[best]) ? i : best;
            }

            var entry = best < 0 ? null : group.Entries[best];
            if (entry is null || IsAllowed(person, entry, hand, reach))
            {
                double worth = entry is null ? double.NegativeInfinity : values[best];
                entry = Varied(person, space, refused, hand, reach, weights, ref worth)
                    ?? Varied(person, space, entry, hand, reach, weights, ref worth) ?? entry;
                return entry is null ? (0, null) : (worth + (_gain * entry.Outfit.Helps), entry);
            }

            refused ??= entry;
            values[best] = double.NegativeInfinity;
        }
    }

    /// <summary>An entry in the variant that is worth most, where one is allowed and earns what it must; null otherwise. As in the ranking, but tried only with what
    /// is allowed and with the first that is not (decision, for speed).</summary>
    private Entry? Varied(LikelyPerson person, Space space, Entry? usual, HandClass hand, ReachClass reach, double[] weights, ref double worth)
    {
        Entry? best = null;
        foreach (var entry in usual?.Variants ?? [])
        {
            if (Net(person, space, entry, hand, reach, weights) is var value && value > worth && IsAllowed(person, entry, hand, reach))
            {
                (best, worth) = (entry, value);
            }
        }

        return best;
    }

    /// <summary>Worth of an entry less what its add-ons and its variant must earn.</summary>
    private double Net(LikelyPerson person, Space space, Entry entry, HandClass hand, ReachClass reach, double[] weights)
    {
        double ofReach = weights[(int)Criterion.Reach], ofHandling = weights[(int)Criterion.Handling], ofIndependence = weights[(int)Criterion.Independence];
        var (able, handling) = Handling(hand, entry.Outfit);
        double arrives = Share(reach, entry, entry.ReachPlace, entry.Outfit.Plan.Aid), share = arrives;
        if (entry.Outfit.Plan.Companion is { } companion)
        {
            share = Math.Min(share, Share(reach, entry, entry.SecondReachPlace, companion));
        }

        share = Learnt(entry.Outfit, Criterion.Reach, share);
        return (able * ((arrives * (_static[entry.Outfit.Index] - (ofIndependence * LostByPatting(person, space, entry, hand, reach)))) + (ofReach * share))) + (arrives * ofHandling * handling) - (_gain * entry.Outfit.Helps);
    }

    /// <summary>How much less a person does alone where the plan leaves water that this hand cannot pat.</summary>
    private double LostByPatting(LikelyPerson person, Space space, Entry entry, HandClass hand, ReachClass reach)
    {
        if (!entry.Outfit.LeavesWater)
        {
            return 0;
        }

        double alone = _values[IndependenceAt][entry.Outfit.Index];
        return alone > _patted && !(_pats[(int)entry.Plan.Posture] ??= Pats(person, space, entry.Plan.Posture, hand, reach)) ? alone - _patted : 0;
    }

    private bool Pats(LikelyPerson person, Space space, Posture posture, HandClass hand, ReachClass reach)
    {
        foreach (var group in space.BareHands)
        {
            foreach (var entry in group.Entries)
            {
                if (entry.Plan.Posture == posture && hand.Part(this, entry.Outfit.Main).Possible && reach.IsAllowed(this, entry)
                    && entry.ButForSkin.Find(person, person.Codes, p => p.Answers, a => IsAllowed(_butForSkin, a, entry.Plan, Nothing)).Value)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static readonly int IndependenceAt = Criteria.OfThePlan.IndexOf(Criterion.Independence);

    private bool IsAllowed(LikelyPerson person, Entry entry, HandClass hand, ReachClass reach) =>
        (entry.Outfit.Main < 0 || hand.Part(this, entry.Outfit.Main).Possible)
        && (entry.Outfit.Second < 0 || hand.Part(this, entry.Outfit.Second).Possible)
        && reach.IsAllowed(this, entry)
        && (entry.Memo.Kept(person.Codes) ?? Judged(person, entry)).Value;

    /// <summary>Apart, so that nothing is made for what is kept.</summary>
    private AnswerMemo<bool>.Node Judged(LikelyPerson person, Entry entry) => entry.Memo.Find(person, person.Codes, p => p.Answers, a => IsAllowed(_byAnswers, a, entry.Plan, Nothing));

    private static readonly PlanDemands Nothing = new();

    private bool IsAllowed(RuleCheck[] rules, Answers answers, Plan plan, PlanDemands demands)
    {
        var context = new RuleContext(_knowledge, answers, plan, demands);
        foreach (var rule in rules)
        {
            if (rule.Check(context).Applies == true)
            {
                return false;
            }
        }

        return true;
    }

    private static double Share(ReachClass reach, Entry entry, int place, Aid aid) =>
        reach.Shares.Has(place, out double share) ? share : reach.Shares.Keep(place, reach.Appraiser.ReachShare(aid, entry.Plan, null));

    /// <summary>Share of hands that can do every step, and the mean of how easily, over the strengths.</summary>
    private (double Able, double Handling) Handling(HandClass hand, Outfit outfit)
    {
        if (outfit.IsHelped)
        {
            return (1, 1);
        }

        if (hand.Outfits.Has(outfit.Index, out var known))
        {
            return known;
        }

        int able = 0;
        double sum = 0;
        for (int s = 0; s < Strengths.Length; s++)
        {
            double value = HandlingAt(hand, outfit, s);
            able += value > 0 ? 1 : 0;
            sum += value;
        }

        double mean = able > 0 ? Learnt(outfit, Criterion.Handling, sum / Strengths.Length) : 0;
        return hand.Outfits.Keep(outfit.Index, ((double)able / Strengths.Length, mean));
    }

    private void Static(LikelyPerson person, double[] weights, Space space)
    {
        if (_static.Length < _all.Count)
        {
            _static = new double[_all.Count * 2];
        }

        foreach (int i in space.Outfits)
        {
            _static[i] = 0;
        }

        for (int c = 0; c < _criteria.Length; c++)
        {
            var criterion = Criteria.OfThePlan[c];
            var node = _criteria[c].Find(person, person.Codes, p => p.Filled, a => ValuesOf(criterion, a, []));
            if (node.Value!.Length < _all.Count)
            {
                node.Value = ValuesOf(criterion, person.Filled, node.Value);
            }

            double weight = weights[(int)criterion];
            double[] values = node.Value;
            _values[c] = values;
            foreach (int i in space.Outfits)
            {
                _static[i] += weight * values[i];
            }
        }
    }

    private double[] ValuesOf(Criterion criterion, Answers filled, double[] before)
    {
        var view = new PersonView(_knowledge.Evidence, filled);
        double[] values = new double[_all.Count];
        before.CopyTo(values, 0);
        for (int i = before.Length; i < values.Length; i++)
        {
            values[i] = Learnt(_all[i], criterion, _functions.Of(criterion, _all[i].Plan, view));
        }

        return values;
    }

    private double[] WeightsOf(Answers answers)
    {
        var order = Priorities.Of(answers).Order;
        if (!_weightsByOrder.TryGetValue(order, out double[]? weights))
        {
            _weightsByOrder[order] = weights = [.. new WeightSet(order).Centroid];
        }

        return weights;
    }

    private HandClass HandOf(Answers filled)
    {
        var facts = AnswerMapping.Hand(filled);
        if (!_handsByFacts.TryGetValue(facts, out var hand))
        {
            var known = new KnownHand(facts, _knowledge.Hand.Capacity(facts));
            _handsByFacts[facts] = hand = new(known, [.. Strengths.Select(known.Capacity.At)], known.Capacity.At(0.5));
        }

        return hand;
    }

    private Space Plans(Answers answers)
    {
        var plans = new PlanSpace(_knowledge.Catalogue, _knowledge.Evidence, answers, _addOns);
        if (!_spacesByKey.TryGetValue(plans.Key, out var space))
        {
            var groups = new List<Group>();
            foreach (var aid in _knowledge.Catalogue.Aids)
            {
                groups.AddRange(plans.Of(aid).Select(p => EntryOf(p, aid)).GroupBy(e => e.Alternative).Select(g => new Group(g.Key, [.. g])));
            }

            _spacesByKey[plans.Key] = space = new([.. groups]);
        }

        return space;
    }

    /// <summary>The entry of a plan, with those of its variants; of what a moist wipe follows there are none (decision, for speed).</summary>
    private Entry EntryOf(Plan plan, Aid kind)
    {
        var entry = EntryOf(plan);
        if (entry.Variants.IsEmpty && plan.Companion is null)
        {
            entry.Variants = [.. kind.Variants.Select(v => EntryOf(plan.As(v)))];
        }

        return entry;
    }

    private Entry EntryOf(Plan plan)
    {
        string addOns = string.Join('+', plan.AddOns.Select(a => a.Id));
        var key = (plan.Aid.Key, plan.Companion?.Id, addOns);
        if (!_outfits.TryGetValue(key, out var outfit))
        {
            _outfits[key] = outfit = new(_all.Count, plan, PartOf(plan.Aid, plan), plan.Companion is { } c ? PartOf(c, plan) : -1);
            _all.Add(outfit);
        }

        int alternative = Alternative(plan.Aid, plan.Posture, plan.Approach);
        if (!_entries.TryGetValue((outfit.Index, alternative), out var entry))
        {
            int main = ReachPlace(plan.Aid, plan), second = ReachPlace(plan.Companion ?? plan.Aid, plan);
            _entries[(outfit.Index, alternative)] = entry = new(plan, outfit, alternative, main, second, Number(_reachPairs, (main, second)));
        }

        return entry;
    }

    private int PartOf(Aid aid, Plan plan)
    {
        if (aid.Method == MethodKind.Helper)
        {
            return -1;
        }

        AddOn[] fitting = [.. plan.AddOns.Where(a => a.OnlyHelps && aid.AddOns.Contains(a.Id))];
        var key = (aid.Key, string.Join('+', fitting.Select(a => a.Id)));
        if (!_parts.TryGetValue(key, out int part))
        {
            _parts[key] = part = _partList.Count;
            _partList.Add((aid, fitting));
        }

        return part;
    }

    private sealed record Space(ImmutableArray<Group> Groups)
    {
        internal Group[] BareHands { get; } = [.. Groups.Where(g => g.Entries[0].Plan is { Aid: { Reach: ReachKind.BareHand, Method: MethodKind.Wipe, Paper: not null } }).Select(g => g with { Entries = [.. g.Entries.Where(e => e.Plan is { Companion: null, AddOns.IsEmpty: true })] })];

        internal int[] Outfits { get; } = [.. Groups.SelectMany(g => g.Entries).SelectMany(e => e.Variants.Prepend(e)).Select(e => e.Outfit.Index).Distinct().Order()];
    }

    private sealed record Group(int Alternative, Entry[] Entries);

    private sealed class Entry(Plan plan, Outfit outfit, int alternative, int reachPlace, int secondReachPlace, int reachPair)
    {
        internal Plan Plan { get; } = plan;

        internal Outfit Outfit { get; } = outfit;

        internal int Alternative { get; } = alternative;

        internal int ReachPlace { get; } = reachPlace;

        internal int SecondReachPlace { get; } = secondReachPlace;

        /// <summary>The same for plans that differ in add-ons only: what rules say of reach looks at nothing else.</summary>
        internal int ReachPair { get; } = reachPair;

        /// <summary>The same in each variant of the kind, where these are looked at.</summary>
        internal ImmutableArray<Entry> Variants { get; set; } = [];

        internal AnswerMemo<bool> Memo { get; } = new();

        internal AnswerMemo<bool> ButForSkin { get; } = new();
    }

    /// <summary>A method with its companion and add-ons, whatever the posture and the way.</summary>
    private sealed class Outfit(int index, Plan plan, int main, int second)
    {
        internal int Index { get; } = index;

        internal Plan Plan { get; } = plan;

        internal int Main { get; } = main;

        internal int Second { get; } = second;

        internal bool IsHelped { get; } = plan.Methods.Any(m => m.Method == MethodKind.Helper);

        internal bool LeavesWater { get; } = plan.Last.Method == MethodKind.Wash;

        /// <summary>Add-ons that must earn their place, and the variant, which must too.</summary>
        internal int Helps { get; } = plan.AddOns.Count(a => a.OnlyHelps) + (plan.Variant is null ? 0 : 1);
    }

    private sealed class HandClass(KnownHand hand, HandStrength[] strengths, HandStrength middle)
    {
        private readonly SlotMemo<(bool Possible, double[] Values)> _parts = new();

        internal SlotMemo<(double Able, double Handling)> Outfits { get; } = new();

        internal (bool Possible, double[] Values) Part(Worths worths, int part)
        {
            if (_parts.Has(part, out var known))
            {
                return known;
            }

            var (aid, addOns) = worths._partList[part];
            var demands = HandlingDemands.Of(aid, addOns, hand.Facts, hand.Capacity.Slowness, worths._knowledge.Hand.Coefficients);
            return _parts.Keep(part, (demands.Score(middle).Possible, [.. strengths.Select(s => demands.Score(s).Value)]));
        }
    }

    private sealed class ReachClass(Appraiser appraiser)
    {
        private readonly SlotMemo<bool> _allowed = new();

        internal Appraiser Appraiser { get; } = appraiser;

        internal SlotMemo<double> Shares { get; } = new();

        internal SlotMemo<bool[]> Draws { get; } = new();

        internal bool IsAllowed(Worths worths, Entry entry) => _allowed.Has(entry.ReachPair, out bool allowed)
            ? allowed
            : _allowed.Keep(entry.ReachPair, worths.IsAllowed(worths._byReach, Appraiser.Known, entry.Plan, Appraiser.ReachDemands(entry.Plan)));
    }
}
