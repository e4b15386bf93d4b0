using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Screens;

/// <summary>One visit under way, whichever mode shows it.</summary>
/// <param name="questions">The questions.</param>
/// <param name="open">The questions still to be asked, the next one first.</param>
/// <param name="depth">How much is asked.</param>
/// <param name="day">Day of the visit.</param>
internal sealed class Visit(QuestionSet questions, Func<Depth, Answers, ImmutableArray<Question>> open, Depth depth, DateOnly day)
{
    private Answers _saved = Answers.None;

    /// <summary>The interview.</summary>
    internal InterviewEngine Engine { get; } = new(questions, answers => open(depth, answers));

    /// <summary>How much is asked.</summary>
    internal Depth Depth => depth;

    /// <summary>What was saved about the person before; null for a new person.</summary>
    internal Profile? Earlier { get; set; }

    /// <summary>The file that it is saved in; null until the person names one.</summary>
    internal string? Path { get; set; }

    /// <summary>Code of the person; null until it is given.</summary>
    internal string? Person { get; set; }

    /// <summary>The file in which its answers are kept since a signal or a fault stopped the program; null for none.</summary>
    internal string? Draft { get; set; }

    /// <summary>The visit as it stands.</summary>
    internal Session Session => new(day, depth, Engine.AnswersSoFar);

    /// <summary>The visit as it is ranked: with what was tried before.</summary>
    internal Session Ranked => Session with { Answers = WithTrials(Session.Answers) };

    /// <summary>Answers with what was tried before.</summary>
    internal Answers WithTrials(Answers answers) => answers.With(Earlier?.Tried ?? []);

    /// <summary>True while something was answered that is not in the file.</summary>
    internal bool IsUnsaved => Session.Answers is var answers && answers.Ids.Any() && !ReferenceEquals(answers, _saved);

    /// <summary>Saves in <see cref="Path"/>; gives why not, as the end of a sentence, or null.</summary>
    internal string? Save(ProfileFile files)
    {
        var session = Session;
        var profile = Earlier is null ? new Profile(Person!, [session]) : Earlier with { Sessions = Earlier.Sessions.Add(session) };
        try
        {
            files.Write(profile, Path!);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return ProfileFile.Reason(e);
        }

        Person = profile.Person;
        _saved = session.Answers;
        DraftFile.Remove(Draft);
        Draft = null;
        return null;
    }
}
