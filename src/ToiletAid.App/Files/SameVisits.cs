using System.Text;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

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
        return first with { Sessions = [.. first.Sessions.Concat(second.Sessions).DistinctBy(Text, StringComparer.Ordinal).OrderBy(s => s.Date)] };
    }

    /// <summary>Number of a visit in a profile, from 0; -1 when it is not there.</summary>
    public int Find(Profile profile, Session session)
    {
        ArgumentNullException.ThrowIfNull(profile);
        string text = Text(session);
        return profile.Sessions.ToList().FindIndex(s => Text(s) == text);
    }

    private string Text(Session session)
    {
        using var stream = new MemoryStream();
        _writer.Write(new("P-0", [session]), stream);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
