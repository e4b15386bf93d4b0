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

    /// <summary>Every plan of every kind for one person, made when it is first asked for.</summary>
    /// <param name="known">Answers as given.</param>
    internal Func<Aid, PlanList> Of(Answers known)
    {
        var space = new PlanSpace(catalogue, evidence, known);
        if (!_spaces.TryGetValue(space.Key, out var lists))
        {
            if (_spaces.Count >= MostSpaces)
            {
                _spaces.Clear();
            }

            _spaces[space.Key] = lists = new(ReferenceEqualityComparer.Instance);
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
}
