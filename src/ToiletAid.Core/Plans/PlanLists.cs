using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>Plans of one catalogue that were made before. Few answers change what plans there are, and making them takes longer than valuing them.</summary>
/// <param name="catalogue">Kinds of aid and add-ons.</param>
/// <param name="evidence">Limits.</param>
internal sealed class PlanLists(AidCatalogue catalogue, EvidenceTable evidence)
{
    /// <summary>Spaces that are kept; then it starts afresh, so that a long batch does not fill the memory.</summary>
    private const int MostSpaces = 64;

    private readonly Dictionary<(string Postures, bool HipLimit, bool LooksForHarm, bool Short, bool MayMount), Dictionary<Aid, PlanList>> _spaces = [];
    private readonly Dictionary<string, ImmutableArray<AddOn>> _addOns = new(StringComparer.Ordinal);
    private readonly Dictionary<Aid, Aid[]> _variants = new(SameObject<Aid>.Comparer);
    private readonly Dictionary<Aid, Dictionary<Plan, Plan>> _varied = new(SameObject<Aid>.Comparer);

    /// <summary>Every plan of every kind for one person, made when it is first asked for.</summary>
    /// <param name="known">Answers as given.</param>
    internal Func<Aid, PlanList> Of(Answers known)
    {
        var space = new PlanSpace(catalogue, evidence, known, _addOns);
        if (!_spaces.TryGetValue(space.Key, out var lists))
        {
            if (_spaces.Count >= MostSpaces)
            {
                _spaces.Clear();
                _varied.Clear();
            }

            _spaces[space.Key] = lists = new(SameObject<Aid>.Comparer);
        }

        return aid =>
        {
            if (!lists.TryGetValue(aid, out var list))
            {
                lists[aid] = list = new([.. space.Of(aid)]);
            }

            return list;
        };
    }

    /// <summary>A kind in each of its variants, made once.</summary>
    /// <param name="aid">The kind, as the catalogue has it.</param>
    internal ReadOnlySpan<Aid> Variants(Aid aid)
    {
        if (!_variants.TryGetValue(aid, out var varied))
        {
            _variants[aid] = varied = [.. aid.Variants.Select(aid.As)];
        }

        return varied;
    }

    /// <summary>A plan of a kind with one of its variants, made once, so that what is worked out for it is found again.</summary>
    /// <param name="usual">A plan of the kind as it usually is, from one of the lists.</param>
    /// <param name="varied">The kind in a variant.</param>
    internal Plan As(Plan usual, Aid varied)
    {
        if (!_varied.TryGetValue(varied, out var plans))
        {
            _varied[varied] = plans = new(SameObject<Plan>.Comparer);
        }

        if (!plans.TryGetValue(usual, out var plan))
        {
            plans[usual] = plan = usual with { Aid = varied };
        }

        return plan;
    }
}
