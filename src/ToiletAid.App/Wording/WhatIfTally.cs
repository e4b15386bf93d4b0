using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Wording;

/// <summary>Counts of first places before and after a change, over a set of people: what a clinic would keep in stock.</summary>
public sealed class WhatIfTally
{
    private static readonly Comparer<(string From, string To)> ByIds = Comparer<(string From, string To)>.Create((a, b) =>
        string.CompareOrdinal(a.From, b.From) is not 0 and var from ? from : string.CompareOrdinal(a.To, b.To));

    private readonly Dictionary<string, string> _names = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, (long Before, long After)> _kinds = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, (long Before, long After)> _addOns = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, (long Before, long After)> _companions = new(StringComparer.Ordinal);
    private readonly SortedDictionary<(string From, string To), SortedDictionary<string, long>> _moves = new(ByIds);

    /// <summary>Makes an empty count.</summary>
    public WhatIfTally(KnowledgeBase before, KnowledgeBase after)
    {
        foreach (var catalogue in (Core.Catalogue.AidCatalogue[])[before.Catalogue, after.Catalogue])
        {
            foreach (var (id, name) in catalogue.Aids.Select(a => (a.Id, a.Name)).Concat(catalogue.AddOns.Select(a => (a.Id, a.Name))))
            {
                _names[id] = name;
            }
        }
    }

    /// <summary>People counted.</summary>
    public long People { get; private set; }

    /// <summary>People for whom another kind is first.</summary>
    public long Changed { get; private set; }

    /// <summary>People stopped by a red flag.</summary>
    public long Stopped { get; private set; }

    /// <summary>First places of kinds of aid, most after first.</summary>
    public IEnumerable<(string Id, long Before, long After)> Kinds => InOrder(_kinds);

    /// <summary>Kinds of aid that follow the first one in first plans, most after first: they are kept in stock too.</summary>
    public IEnumerable<(string Id, long Before, long After)> Companions => InOrder(_companions);

    /// <summary>Add-ons in first plans, most after first.</summary>
    public IEnumerable<(string Id, long Before, long After)> AddOns => InOrder(_addOns);

    /// <summary>Moves from one kind to another with what carried them, most people first. An empty id stands for no plan.</summary>
    public IEnumerable<(string From, string To, long People, IReadOnlyDictionary<string, long> Why)> Moves =>
        _moves.Select(m => (m.Key.From, m.Key.To, People: m.Value.Values.Sum(), (IReadOnlyDictionary<string, long>)m.Value)).OrderByDescending(m => m.People);

    /// <summary>Name of a kind or an add-on.</summary>
    public string Name(string id) => id.Length == 0 ? "no plan" : PlanText.Lower(_names[id]);

    /// <summary>Counts one person.</summary>
    public void Add(FirstPlaceMove move)
    {
        People++;
        Stopped += move.Stopped ? 1 : 0;
        Count(move.Before?.Plan, before: true);
        Count(move.After?.Plan, before: false);
        if (!move.IsChanged)
        {
            return;
        }

        Changed++;
        var key = (move.Before?.Plan.Aid.KindId ?? string.Empty, move.After?.Plan.Aid.KindId ?? string.Empty);
        if (!_moves.TryGetValue(key, out var why))
        {
            _moves[key] = why = new(StringComparer.Ordinal);
        }

        string reason = Why(move);
        why[reason] = why.GetValueOrDefault(reason) + 1;
    }

    /// <summary>Why the first place moved, as a word: the criterion that carried it, or the id of the rule that now forbids the old first.</summary>
    public static string Why(FirstPlaceMove move) => move.CarriedBy is { } criterion ? Words.Of(criterion) : move.RuledOut?.Id ?? "not-offered";

    private static IEnumerable<(string Id, long Before, long After)> InOrder(SortedDictionary<string, (long Before, long After)> counts) =>
        counts.Select(c => (c.Key, c.Value.Before, c.Value.After)).OrderByDescending(c => c.After).ThenByDescending(c => c.Before);

    private void Count(Plan? plan, bool before)
    {
        if (plan is null)
        {
            return;
        }

        Add(_kinds, plan.Aid.KindId);
        if (plan.Companion is { } companion)
        {
            Add(_companions, companion.Id);
        }

        foreach (var addOn in plan.AddOns)
        {
            Add(_addOns, addOn.Id);
        }

        void Add(SortedDictionary<string, (long Before, long After)> counts, string id)
        {
            var (b, a) = counts.GetValueOrDefault(id);
            counts[id] = before ? (b + 1, a) : (b, a + 1);
        }
    }
}
