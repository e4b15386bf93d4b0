using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Outcomes;

/// <summary>A clinic's caseload: who is due, what is in use, what came back, what will be wanted.</summary>
/// <param name="catalogue">Kinds of aid.</param>
public sealed class CaseloadTally(AidCatalogue catalogue)
{
    private const double QuarterYears = 0.25;

    private readonly List<CaseloadEntry> _people = [];

    /// <summary>The people, in the order in which they came.</summary>
    public IReadOnlyList<CaseloadEntry> People => _people;

    /// <summary>Weeks after the last visit at which a review is due unless somebody says otherwise.</summary>
    /// <param name="evidence">The numbers.</param>
    public static int UsualWeeks(EvidenceTable evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        return (int)evidence.Value(EvidenceIds.CaseloadReviewWeeks);
    }

    /// <summary>Counts a person.</summary>
    /// <param name="person">Where they stand.</param>
    public void Add(CaseloadEntry person) => _people.Add(person);

    /// <summary>What every kind stands at, kinds that nobody has or wants left out.</summary>
    public IEnumerable<Stand> Kinds => catalogue.Aids.Select(Of).Where(s => s.InUse + s.CameBack + s.First > 0);

    private Stand Of(Aid aid)
    {
        int inUse = _people.Count(p => p.InUse == aid.Id);
        return new(aid, inUse, _people.Count(p => p.GivenUp.Contains(aid.Id)), _people.Count(p => p.First == aid.Id), aid.Method == MethodKind.Helper ? 0 : inUse * QuarterYears / aid.Upkeep.LifeYears.Value);
    }

    /// <summary>What a kind stands at.</summary>
    /// <param name="Aid">The kind.</param>
    /// <param name="InUse">People who use it.</param>
    /// <param name="CameBack">People who gave it up.</param>
    /// <param name="First">People with whom nothing worked yet and for whom it comes first.</param>
    /// <param name="WornOut">How many of those in use wear out within a quarter on average.</param>
    public sealed record Stand(Aid Aid, int InUse, int CameBack, int First, double WornOut);
}
