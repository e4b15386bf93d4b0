using ToiletAid.App.Files;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>Two profiles of one person as one, each visit once.</summary>
/// <param name="questions">The questions.</param>
public sealed class SameVisits(QuestionSet questions)
{
    private readonly ProfileWriter _writer = new(questions);

    /// <summary>All visits of both, oldest first.</summary>
    public Profile Together(Profile first, Profile second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return first with { Sessions = [.. SessionMerge.Together(first.InTime, SessionMerge.Missing(first.Sessions, second.InTime, _writer)).OrderBy(s => s.Date)] };
    }

    /// <summary>Number of a visit in a profile, from 0; -1 when it is not there.</summary>
    public int Find(Profile profile, Session session)
    {
        ArgumentNullException.ThrowIfNull(profile);
        string text = _writer.Text(session);
        return profile.Sessions.ToList().FindIndex(s => _writer.Text(s) == text);
    }
}
