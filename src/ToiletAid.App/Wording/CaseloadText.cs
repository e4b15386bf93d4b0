using System.Globalization;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;

namespace ToiletAid.App.Wording;

/// <summary>A clinic's caseload as sentences to be read aloud, and as a table.</summary>
/// <param name="knowledge">Names of the kinds.</param>
/// <param name="today">The day from which weeks are counted.</param>
/// <param name="weeks">Weeks after the last visit at which a review is due.</param>
public sealed class CaseloadText(KnowledgeBase knowledge, DateOnly today, int weeks)
{
    private const int DaysOfWeek = 7;

    /// <summary>Everything.</summary>
    /// <param name="tally">The caseload.</param>
    public IEnumerable<string> Lines(CaseloadTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        yield return $"{Number(tally.People.Count)} {(tally.People.Count == 1 ? "person" : "people")} on {IsoDay.Of(today)}. A review is due {Number(weeks)} weeks after the last visit.";
        CaseloadEntry[] due = [.. tally.People.OrderBy(p => p.Seen).ThenBy(p => p.Person, StringComparer.Ordinal)];
        foreach (string line in List("Overdue", due.Where(p => Due(p) < today)).Concat(List("Due in the coming seven days", due.Where(p => Due(p) >= today && Due(p) < today.AddDays(DaysOfWeek)))))
        {
            yield return line;
        }

        yield return "A kind is in use where its last try did not fail. A profile does not say whether it was bought, lent or returned, so ask.";
        foreach (var stand in tally.Kinds)
        {
            yield return Stand(stand);
        }
    }

    /// <summary>One row a person.</summary>
    /// <param name="tally">The caseload.</param>
    public IEnumerable<string> Rows(CaseloadTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        return tally.People.Select(p => $"{p.Person},{IsoDay.Of(p.Seen)},{IsoDay.Of(Due(p))},{p.InUse},{string.Join(' ', p.GivenUp)},{p.First}").Prepend("person,lastSeen,reviewDue,inUse,givenUp,firstPlace");
    }

    private IEnumerable<string> List(string title, IEnumerable<CaseloadEntry> people)
    {
        string[] lines = [.. people.Select(p => $"{p.Person}, last seen {IsoDay.Of(p.Seen)}, due {IsoDay.Of(Due(p))}{(p.InUse is { } aid ? $", uses {PlanText.Lower(Name(aid))}" : ", nothing has worked yet")}.")];
        return lines.Prepend(lines.Length == 0 ? $"{title}: nobody." : $"{title}: {Number(lines.Length)}.");
    }

    private static string Stand(CaseloadTally.Stand stand)
    {
        int wanted = stand.First + (int)Math.Ceiling(stand.WornOut);
        string[] parts =
        [
            $"in use with {Number(stand.InUse)}",
            .. stand.CameBack > 0 ? [$"given up by {Number(stand.CameBack)}"] : (string[])[],
            .. stand.First > 0 ? [$"first for {Number(stand.First)} for whom nothing has worked yet"] : (string[])[],
        ];
        string stock = stand.Aid.Upkeep.Price.Value == 0 || wanted == 0 ? string.Empty : $" Wanted in the next quarter: about {Number(wanted)}, {Number(wanted - stand.First)} of them to replace worn ones.";
        return $"{stand.Aid.Name}: {parts.Humanize("and")}.{stock}";
    }

    private DateOnly Due(CaseloadEntry person) => person.Seen.AddDays(weeks * DaysOfWeek);

    private string Name(string aid) => knowledge.Catalogue.Aids.FirstOrDefault(a => a.Id == aid)?.Name ?? aid;

    private static string Number(int count) => count.ToString("N0", CultureInfo.InvariantCulture);
}
