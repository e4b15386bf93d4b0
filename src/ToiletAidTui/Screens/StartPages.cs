using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;
using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>The screens before an interview.</summary>
internal static class StartPages
{
    internal const string ProfileName = "profile";

    /// <summary>Codes that are listed; more would not be heard to the end.</summary>
    private const int MostCodes = 12;

    /// <summary>The first screen.</summary>
    internal static Page Start() => new ListPage("start", "Toilet aid. Matches a person to the right kind of aid.", [],
    [
        new("New assessment", s => Another(s, () => Depths(null, null))),
        new("Open a saved profile", s => Another(s, () => Open(s))),
        new("Compare two visits", s => s.Push(ToolPages.Compare())),
        new("Calculators", s => s.Push(ToolPages.Calculators(s))),
        new("Kinds side by side", s => s.Push(ToolPages.Explain(s))),
        new("Settings", s => s.Push(SettingsPages.Make(s))),
        new("Help", s => s.Press(new(KeyAction.Help))),
        new("Leave", s => s.Press(new(KeyAction.Leave))),
    ]);

    /// <summary>A note that was begun in one profile must never end up in another.</summary>
    private static void Another(Shell shell, Func<Page> next) => CommonPages.Unless(shell, "home", "Go on without the note", s =>
    {
        s.Visit?.Forget();
        s.Visit = null;
        s.Push(next());
    });

    /// <summary>Goes to the first screen, after a question when something is not saved.</summary>
    internal static void Home(Shell shell) => CommonPages.Unless(shell, "home", "Start screen, without saving", s =>
    {
        s.Visit?.Forget();
        s.Visit = null;
        s.Restart(Start());
    });

    /// <summary>A question about the answers of a visit that was stopped, if there are any.</summary>
    /// <param name="services">What the screens work with.</param>
    /// <param name="earlier">The profile that the visit is for; null for visits without a file.</param>
    /// <param name="path">Its file.</param>
    /// <param name="next">What is shown when they are not taken up.</param>
    internal static Page? Stopped(ScreenServices services, StoredProfile? earlier, string? path, Func<Page> next)
    {
        var each = services.EachAnswer(path, earlier);
        if (each is null || each.Left() is not [string draft, ..])
        {
            return null;
        }

        return new ListPage("draft", $"Answers of a visit that was stopped on {IsoDay.Of(DateOnly.FromDateTime(File.GetLastWriteTime(draft)))} are kept.", [],
        [
            new("Carry on with them", s =>
            {
                var read = each.Read(draft);
                if (!read.TryGet(out var kept))
                {
                    s.Show($"{read.Issues[0].Sentence(draft)}.");
                    return;
                }

                string? person = kept.Person == AnswerJournal.NoCode ? null : kept.Person;
                var visit = new Visit(s.Services.Questions, s.Services.Open, kept.Latest.Depth, kept.Latest.Date) { Profiles = s.Services.Profiles, Earlier = earlier, Path = path, Person = person, Draft = draft, IsLate = kept.Latest.IsLate };
                visit.Engine.TakeUp(kept.Latest);
                Begin(s, visit);
            }),
            new("Leave them for later", s => s.Replace(next())),
            new("Delete them", s =>
            {
                s.Replace(next(), AnswerDraft.Remove(draft) ?? "Thrown away.");
            }),
        ]);
    }

    /// <summary>Starts the interview of a visit.</summary>
    internal static void Begin(Shell shell, Visit visit)
    {
        if (shell.Visit is { IsUnsaved: true } noted && noted.Path == visit.Path)
        {
            // What was noted before the first question belongs to this visit.
            visit.Engine.Note.TakeUp(noted.Engine.Note.Unsaved);
            noted.Forget();
        }

        shell.Visit = visit;
        if (visit.Kept is null)
        {
            shell.KeepAnswers(visit);
        }

        if (!visit.Engine.Note.Lines.IsEmpty)
        {
            visit.Kept?.Keep(visit);
        }

        if (visit.Engine.Current is null)
        {
            shell.Restart(ResultPages.Make(shell, visit), shell.Services.Ended(visit));
            return;
        }

        shell.Restart(QuestionPage.Make(visit, withTopic: true));
    }

    private static ListPage Depths(StoredProfile? earlier, string? path)
    {
        Entry For(Depth depth, string label) => new(label, s => Begin(s, new(s.Services.Questions, s.Services.Open, depth, s.Services.Today()) { Profiles = s.Services.Profiles, Earlier = earlier, Path = path }));
        return new("depth", "How much is asked?", [],
        [
            For(Depth.Quick, "Quick, by observation"),
            For(Depth.Full, "Full, everything that can matter"),
            For(Depth.Measured, "Measured, with goniometer, dynamometer, peg test and tape"),
        ]);
    }

    /// <summary>The profiles in the user's own folder, the last changed first, and a line to type for any other.</summary>
    private static Page Open(Shell shell)
    {
        var codes = shell.Services.Profiles.Codes().Take(MostCodes).ToList();
        return codes.Count == 0 ? Named() : new ListPage("codes", "Open a saved profile.", [],
        [
            .. codes.Select(c => new Entry($"{c.Code}, {IsoDay.Of(c.Changed)}", s =>
            {
                if (Fault(s, c.Code, replaces: false) is { } fault)
                {
                    s.Show(fault);
                }
            })),
            new("Another code or file", s => s.Push(Named())),
            new("Go back", s => s.Pop()),
        ]);
    }

    private static EditPage Named() => new("open", ["Open a saved profile, by the code of the person or by its file."], "Code or file", "Not opened. Code or file", (shell, typed) => Fault(shell, typed, replaces: true));

    /// <summary>Opens a profile, and asks for its passphrase first where it needs one; gives why not.</summary>
    private static string? Fault(Shell shell, string typed, bool replaces)
    {
        if (typed.Length == 0)
        {
            return "Nothing was typed.";
        }

        string path = shell.Services.Profiles.Find(typed);
        var read = shell.Services.Files.Open(path, shell.Services.Passphrase);
        if (read.TryGet(out var stored))
        {
            Attend(shell, stored, path);
            Put(shell, Opened(stored, path), replaces);
            return null;
        }

        if (ProfileFile.IsProtected(path))
        {
            Put(shell, Locked(path), replaces);
            return null;
        }

        return $"{read.Issues[0].Sentence(path)}.";
    }

    private static EditPage Locked(string path) => new("passphrase", ["This profile is protected. What is typed is not shown."], "Passphrase", "Not opened. Passphrase", (shell, typed) =>
    {
        var read = shell.Services.Files.Open(path, () => typed.Length == 0 ? null : typed);
        if (!read.TryGet(out var stored))
        {
            return typed.Length == 0 ? "Nothing was typed." : $"{read.Issues[0].Sentence(path)}.";
        }

        shell.Services.Know(typed);
        Attend(shell, stored, path);
        shell.Replace(Opened(stored, path));
        return null;
    }, isHidden: true);

    private static void Put(Shell shell, Page page, bool replaces)
    {
        if (replaces)
        {
            shell.Replace(page);
            return;
        }

        shell.Push(page);
    }

    /// <summary>What can be done with a saved profile.</summary>
    internal static Page Opened(StoredProfile stored, string path) => new ListPage(ProfileName,
        $"Profile of {stored.Profile.Person}. {(stored.Profile.Sessions.Length == 1 ? "1 visit" : $"{stored.Profile.Sessions.Length} visits")}, the latest on {IsoDay.Of(stored.Profile.InTime[^1].Date)}.", [],
    [
        new("New visit for this person", s => s.Push(Stopped(s.Services, Now(s, stored, path), path, () => New(s, Now(s, stored, path), path)) ?? New(s, Now(s, stored, path), path))),
        new("Result of the latest visit", s => s.Push(ResultPages.Saved(s, Now(s, stored, path).Profile, path))),
        .. stored.Profile.Sessions.Length < 2 ? (Entry[])[] : [new("Compare the last two visits", s => ToolPages.Compared(s, path))],
        new("Record a trial", s => s.Press(new(KeyAction.Trial))),
        new("Write a note for today", s => s.Press(new(KeyAction.Note))),
        new("Write a document", s => s.Push(ToolPages.Documents(s, path))),
        new("Kinds side by side", s => s.Push(ToolPages.Explain(s, path))),
        new("Go back", s => s.Pop()),
    ]);

    /// <summary>How much is asked, after a question when the clock stands before the last visit.</summary>
    private static ListPage New(Shell shell, StoredProfile earlier, string path)
    {
        var doubt = VisitDay.Doubt(shell.Services.Today(), shell.Services.Today(), earlier.Profile);
        return doubt is null ? Depths(earlier, path) : new("day", doubt.Sentence, [],
        [
            new($"Today is {IsoDay.Of(shell.Services.Today())}, go on", s => s.Replace(Depths(earlier, path))),
            new("Go back, and set the clock first", s => s.Pop()),
        ]);
    }

    /// <summary>The profile with what was saved in it since it was opened.</summary>
    private static StoredProfile Now(Shell shell, StoredProfile opened, string path) =>
        shell.Visit is { Earlier: { } saved } visit && visit.Path == path ? saved : opened;

    /// <summary>A note or a trial without an interview is a visit of its own, with nothing answered.</summary>
    private static void Attend(Shell shell, StoredProfile stored, string path)
    {
        shell.Visit = new(shell.Services.Questions, shell.Services.Open, stored.Profile.Sessions[^1].Depth, shell.Services.Today()) { Profiles = shell.Services.Profiles, Earlier = stored, Path = path };
        shell.KeepAnswers(shell.Visit);
    }
}
