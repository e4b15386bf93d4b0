using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Outcomes;

/// <summary>Where one person stands in a clinic's caseload.</summary>
/// <param name="Person">Code of the person.</param>
/// <param name="Seen">Day of the last visit.</param>
/// <param name="InUse">Id of the kind whose last try was the last one that did not fail; null where nothing worked yet.</param>
/// <param name="GivenUp">Ids of kinds that worked once and failed later, or were followed by another that worked.</param>
/// <param name="First">Id of the kind that comes first for a person with whom nothing worked yet; null where nothing can be offered or something is in use.</param>
public sealed record CaseloadEntry(string Person, DateOnly Seen, string? InUse, ImmutableArray<string> GivenUp, string? First)
{
    /// <summary>Where a person stands.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="profile">The person.</param>
    /// <param name="advise">Advises where nothing worked yet.</param>
    public static CaseloadEntry Of(KnowledgeBase knowledge, Profile profile, Func<Answers, Advice> advise)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(advise);
        string? inUse = null;
        var givenUp = new List<string>();
        foreach (var past in profile.Tried)
        {
            bool byHelper = knowledge.Catalogue.Aids.FirstOrDefault(a => a.Id == past.Trial.Plan.Aid)?.Method == MethodKind.Helper;
            if (past.Trial.Runs.Select(r => RunFindings.Of(knowledge.Trials, knowledge.Evidence, r, byHelper)).LastOrDefault(f => f.WasTried) is not { } last)
            {
                continue;
            }

            string aid = past.Trial.Plan.Aid;
            bool works = last.Failures.IsEmpty;
            if (inUse is not null && works != (inUse == aid))
            {
                givenUp.Add(inUse);
                inUse = null;
            }

            if (works)
            {
                inUse = aid;
                givenUp.Remove(aid);
            }
        }

        string? first = inUse is null ? advise(profile.Latest.Answers).Ranked.FirstOrDefault()?.Plan.Aid.KindId : null;
        return new(profile.Person, profile.Sessions.Max(s => s.Date), inUse, [.. givenUp.Distinct()], first);
    }
}
