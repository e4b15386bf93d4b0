using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>What is saved about one person.</summary>
/// <param name="Person">A code, never a name.</param>
/// <param name="Sessions">Visits in the order in which they were written; at least one. Their days alone order nothing: years are mistyped, and clocks are set back.</param>
public sealed record Profile(string Person, ImmutableArray<Session> Sessions)
{
    /// <summary>The visits in the order in which they took place: as they were written, but one that was written late before those of later days.</summary>
    public ImmutableArray<Session> InTime
    {
        get
        {
            var ordered = new List<Session>();
            foreach (var session in Sessions)
            {
                int before = session.IsLate ? ordered.FindIndex(s => s.Date > session.Date) : -1;
                ordered.Insert(before < 0 ? ordered.Count : before, session);
            }

            return [.. ordered];
        }
    }

    /// <summary>The newest visit at which something was answered, with everything that was tried until now. A red flag that was written down since,
    /// for an earlier day, is among its answers: it must be heard.</summary>
    public Session Latest
    {
        get
        {
            var latest = KnownAt(Sessions.Length - 1);
            var late = LateFlags;
            if (late.IsEmpty)
            {
                return latest;
            }

            var flags = (latest.Answers.Many(QuestionIds.RedFlags) ?? []).Union(late.SelectMany(s => s.Answers.Many(QuestionIds.RedFlags)!.Value), StringComparer.Ordinal);
            return latest with { Answers = latest.Answers.With(QuestionIds.RedFlags, new(new AnswerValue.Many([.. flags]), HowObtained.Reported)) };
        }
    }

    /// <summary>Visits of earlier days than the latest one that were written after it and have a red flag.</summary>
    public ImmutableArray<Session> LateFlags
    {
        get
        {
            if (!Sessions.Any(s => s.IsLate))
            {
                return [];
            }

            var visits = InTime;
            int latest = Sessions.IndexOf(visits[Answered(visits, visits.Length - 1)]);
            return [.. Sessions.Skip(latest + 1).Where(s => s.IsLate && s.Answers.Many(QuestionIds.RedFlags) is { IsEmpty: false })];
        }
    }

    /// <summary>Everything that was tried, oldest first.</summary>
    public ImmutableArray<PastTrial> Tried => TriedUntil(InTime, Sessions.Length - 1);

    /// <summary>What is known after a visit: the newest one until then at which something was answered, with everything that was tried until then.</summary>
    /// <param name="visit">Number of the visit as they took place, from 0.</param>
    public Session KnownAt(int visit)
    {
        var visits = InTime;
        var session = visits[Answered(visits, visit)];
        return session with { Answers = session.Answers.With(TriedUntil(visits, visit)) };
    }

    /// <summary>What was noted at the newest visit at which something was answered, and since.</summary>
    public ImmutableArray<PastNote> LatestNotes =>
        [.. InTime.Skip(Answered(InTime, Sessions.Length - 1)).Where(s => !s.Note.IsEmpty).Select(s => new PastNote(s.Date, s.Note))];

    private static int Answered(ImmutableArray<Session> visits, int visit)
    {
        while (visit > 0 && !visits[visit].Answers.Ids.Any())
        {
            visit--;
        }

        return visit;
    }

    private static ImmutableArray<PastTrial> TriedUntil(ImmutableArray<Session> visits, int visit) =>
        [.. visits.Take(visit + 1).SelectMany(s => s.Trials.Select(t => new PastTrial(s.Date, t)))];
}
