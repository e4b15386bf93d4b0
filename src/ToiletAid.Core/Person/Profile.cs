using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>What is saved about one person.</summary>
/// <param name="Person">A code, never a name.</param>
/// <param name="Sessions">Visits, oldest first; at least one.</param>
public sealed record Profile(string Person, ImmutableArray<Session> Sessions)
{
    /// <summary>The newest visit at which something was answered, with everything that was tried until now.</summary>
    public Session Latest => KnownAt(Sessions.Length - 1);

    /// <summary>Everything that was tried, oldest first.</summary>
    public ImmutableArray<PastTrial> Tried => TriedUntil(Sessions.Length - 1);

    /// <summary>What is known after a visit: the newest one until then at which something was answered, with everything that was tried until then.</summary>
    /// <param name="visit">Number of the visit, from 0.</param>
    public Session KnownAt(int visit)
    {
        var session = Sessions[Answered(visit)];
        return session with { Answers = session.Answers.With(TriedUntil(visit)) };
    }

    /// <summary>What was noted at the newest visit at which something was answered, and since.</summary>
    public ImmutableArray<PastNote> LatestNotes =>
        [.. Sessions.Skip(Answered(Sessions.Length - 1)).Where(s => !s.Note.IsEmpty).Select(s => new PastNote(s.Date, s.Note))];

    private int Answered(int visit)
    {
        while (visit > 0 && !Sessions[visit].Answers.Ids.Any())
        {
            visit--;
        }

        return visit;
    }

    private ImmutableArray<PastTrial> TriedUntil(int visit) => [.. Sessions.Take(visit + 1).SelectMany(s => s.Trials.Select(t => new PastTrial(s.Date, t)))];
}
