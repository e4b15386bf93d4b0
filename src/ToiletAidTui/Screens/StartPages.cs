using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAidTui.Host;

namespace ToiletAidTui.Screens;

/// <summary>The screens before an interview.</summary>
internal static class StartPages
{
    /// <summary>The first screen.</summary>
    internal static Page Start() => new ListPage("start", "Toilet aid. Matches a person to the right kind of aid.", [],
    [
        new("New assessment", s => s.Push(Depths(null, null))),
        new("Open a saved profile", s => s.Push(Open())),
        new("Settings", s => s.Push(SettingsPages.Make(s))),
        new("Help", s => s.Press(new(Act.Help))),
        new("Leave", s => s.Press(new(Act.Leave))),
    ]);

    /// <summary>Goes to the first screen, after a question when something is not saved.</summary>
    internal static void Home(Shell shell) => CommonPages.Unless(shell, "home", "Go to the start screen and lose the answers", s =>
    {
        DraftFile.Remove(s.Visit?.Draft);
        s.Visit = null;
        s.Restart(Start());
    });

    /// <summary>Offers the answers of a visit that was stopped.</summary>
    /// <param name="draft">The file that they are kept in.</param>
    internal static Page Kept(string draft) => new ListPage("draft", $"Answers of a visit that was stopped on {File.GetLastWriteTime(draft):yyyy-MM-dd} are kept.", [],
    [
        new("Take them up", s =>
        {
            if (s.Desk.Drafts.TakeUp(draft, s.Desk) is { } visit)
            {
                Begin(s, visit);
                return;
            }

            s.Show($"{draft} cannot be read.");
        }),
        new("Leave them for later", s => s.Replace(Start())),
        new("Throw them away", s =>
        {
            DraftFile.Remove(draft);
            s.Replace(Start(), "Thrown away.");
        }),
    ]);

    /// <summary>Starts the interview of a visit.</summary>
    internal static void Begin(Shell shell, Visit visit)
    {
        shell.Visit = visit;
        if (visit is { Path: not null, Kept: null })
        {
            shell.Desk.KeepAnswers(visit);
        }

        shell.Restart(visit.Engine.Current is null ? ResultPages.Make(shell, visit) : QuestionPage.Make(visit, withTopic: true));
    }

    private static ListPage Depths(StoredProfile? earlier, string? path)
    {
        Entry For(Depth depth, string label) => new(label, s => Begin(s, new(s.Desk.Questions, s.Desk.Open, depth, s.Desk.Today()) { Earlier = earlier, Path = path }));
        return new("depth", "How much is asked?", [],
        [
            For(Depth.Quick, "Quick, by observation"),
            For(Depth.Full, "Full, everything that can matter"),
            For(Depth.Measured, "Measured, with goniometer, dynamometer, peg test and tape"),
        ]);
    }

    private static EditPage Open() => new("open", ["Open a saved profile."], "File", "Not opened. File", (shell, path) =>
    {
        if (path.Length == 0)
        {
            return "Nothing was typed.";
        }

        var read = shell.Desk.Files.Open(path, shell.Desk.Passphrase);
        if (!read.TryGet(out var stored))
        {
            return $"{read.Issues[0].Sentence(path)}.";
        }

        shell.Replace(Opened(stored, path));
        return null;
    });

    private static ListPage Opened(StoredProfile stored, string path) => new("profile",
        $"Profile of {stored.Profile.Person}. {(stored.Profile.Sessions.Length == 1 ? "1 visit" : $"{stored.Profile.Sessions.Length} visits")}, the latest on {stored.Profile.Latest.Date:yyyy-MM-dd}.", [],
    [
        new("New visit for this person", s => s.Push(Depths(stored, path))),
        new("Result of the latest visit", s => s.Push(ResultPages.Saved(s, stored.Profile))),
        new("Go back", s => s.Pop()),
    ]);
}
