using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Trials;

/// <summary>A trial from the first question to the saved profile, whichever mode asks.</summary>
public sealed class TrialRecording
{
    private readonly KnowledgeBase _knowledge;
    private readonly Advisor _advisor;
    private readonly Profile _profile;
    private readonly DateOnly _day;

    private TrialRecording(KnowledgeBase knowledge, Advisor advisor, Profile profile, DateOnly day, Advice advice)
    {
        (_knowledge, _advisor, _profile, _day) = (knowledge, advisor, profile, day);
        Interview = new(advice.Ranked, knowledge.Trials);
    }

    /// <summary>What is asked.</summary>
    public TrialInterview Interview { get; }

    /// <summary>The free note of the trial.</summary>
    public SessionNote Note { get; } = new();

    /// <summary>What it is, in a sentence.</summary>
    public string Title => $"Trial of a plan with {_profile.Person}, on {IsoDay.Of(_day)}.";

    /// <summary>The trial as it was noted, to be read out; empty when nothing was tried.</summary>
    public IEnumerable<string> Summary => Interview.Result is { } trial ? new TrialText(_knowledge).Lines(new(_day, trial)) : [];

    /// <summary>Begins.</summary>
    /// <param name="knowledge">Everything known beforehand.</param>
    /// <param name="advisor">Where advice comes from.</param>
    /// <param name="profile">The profile as it is saved.</param>
    /// <param name="day">Day of the trial.</param>
    /// <param name="today">The day by the clock.</param>
    /// <param name="faults">Why there can be none, in sentences; empty when it begins.</param>
    public static TrialRecording? Begin(KnowledgeBase knowledge, Advisor advisor, Profile profile, DateOnly day, DateOnly today, out ImmutableArray<string> faults)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(advisor);
        faults = [];
        if (VisitDay.Doubt(day, today, profile) is { Kind: not DayDoubt.LaterVisit } doubt)
        {
            faults = [doubt.Kind == DayDoubt.AfterToday ? doubt.Sentence : $"The last visit was on {IsoDay.Of(VisitDay.Last(profile, today)!.Value)}, so a trial cannot be on {IsoDay.Of(day)}."];
            return null;
        }

        var advice = advisor.Advise(profile.Latest.Answers);
        if (advice.Ranked.IsEmpty)
        {
            faults = [.. advice.Stops.Select(AdviceText.Sentence).DefaultIfEmpty("No plan can be offered on these answers, so there is none to try.")];
            return null;
        }

        return new(knowledge, advisor, profile, day, advice);
    }

    /// <summary>Adds the trial to whatever the file holds by now; gives it as it stands then, or why not as the end of a sentence.</summary>
    /// <param name="path">The profile.</param>
    /// <param name="passphrase">Asked when it is protected.</param>
    public (StoredProfile? Saved, string? Fault) Save(string path, Func<string?> passphrase)
    {
        var trial = Interview.Result! with { Predicted = _advisor.Predict(_profile.Latest.Answers, Interview.Plan!.Plan) };
        var session = new Session(_day, _profile.Latest.Depth, Answers.None) { Trials = [trial], Note = Note.Lines };
        try
        {
            var saved = new ProfileStore(_knowledge.Questions).Add(path, _profile.Person, session, new(_profile, 0, Seal.Whole), passphrase);
            return saved.TryGet(out var now) ? (now.Stored, null) : (null, saved.Issues[0].Message);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, FileFault.Reason(e));
        }
    }

    /// <summary>How the ranking moved, in sentences.</summary>
    /// <param name="saved">The profile with the trial.</param>
    public IEnumerable<string> Moved(Profile saved)
    {
        ArgumentNullException.ThrowIfNull(saved);
        return TrialText.Moved(Interview.Plan!, _advisor.Advise(saved.Latest.Answers));
    }
}
