using System.Collections.Immutable;
using ToiletAid.App.Wording;
using ToiletAid.Core.Person;
using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>The result of a visit: the brief result with what can be chosen on its first page, and a page for each level behind it.</summary>
internal static class ResultPages
{
    internal const string PageName = "result";

    private const string Title = "Result.";

    /// <summary>Shows the result in place of the last question.</summary>
    /// <param name="shell">The screens.</param>
    /// <param name="visit">The visit, with nothing left to ask.</param>
    /// <param name="reply">What the last answer led to.</param>
    internal static void Open(Shell shell, Visit visit, string reply = "") => shell.Replace(Make(shell, visit), $"{reply} {shell.Services.Ended(visit)}".TrimStart());

    /// <summary>The result of the visit under way.</summary>
    internal static Page Make(Shell shell, Visit visit)
    {
        var parts = shell.Services.Result(visit.Ranked);
        return new ListPage(PageName, Title, parts.Brief,
        [
            .. Levels(parts, visit.Ranked),
            new("Save", s => s.Press(new(KeyAction.Save))),
            new("More", s => s.Push(More(s, visit))),
        ], inSentence: true)
        { Place = parts.Place, GoesBack = GoBack };
    }

    /// <summary>The result of a visit that was saved before.</summary>
    /// <param name="shell">The screens.</param>
    /// <param name="profile">The profile.</param>
    /// <param name="path">Where it is saved.</param>
    internal static Page Saved(Shell shell, Profile profile, string path)
    {
        var parts = shell.Services.Result(profile.Latest);
        return new ListPage(PageName, Title, parts.Brief,
        [
            .. Levels(parts, profile.Latest),
            new("Why not another kind", s => s.Push(WhyNot(s, profile.Latest))),
            .. ArticlePages.Entries(() => profile.Latest),
            SideBySide(path),
            new("Record a trial", s => s.Press(new(KeyAction.Trial))),
            new("Go back", s => s.Pop()),
        ], inSentence: true)
        { Place = parts.Place };
    }

    private static ListPage More(Shell shell, Visit visit) => new("more", "More.", [],
    [
        new("Why not another kind", s => s.Push(WhyNot(s, visit.Ranked))),
        .. ArticlePages.Entries(() => visit.Ranked),
        SideBySide(visit.IsUnsaved ? null : visit.Path),
        new("Record a trial", s => Over(s, KeyAction.Trial)),
        new("Write a note", s => Over(s, KeyAction.Note)),
        new("Write a document", s => Document(s, visit)),
        new("Answers so far", s => Over(s, KeyAction.Answers)),
        new("Change the last answer", s =>
        {
            s.Pop();
            GoBack(s);
        }),
        new("Start screen", StartPages.Home),
        new("Leave", s => s.Press(new(KeyAction.Leave))),
        new($"Back to the result, {shell.Services.Keys.Words(KeyAction.Back)}", s => s.Pop()),
    ]);

    /// <summary>From the list of what else can be done: back to the result, and the key there.</summary>
    private static void Over(Shell shell, KeyAction act)
    {
        shell.Pop();
        shell.Press(new(act));
    }

    /// <summary>What is still to be asked comes last, after what a search has to find.</summary>
    private static List<Entry> Levels(ResultParts parts, Session session)
    {
        var levels = parts.Levels.Select(l => new Entry(l.Title, s => s.Push(Detail(l.Title, l.Lines)))).ToList();
        if (levels.Count > 0)
        {
            levels.Insert(parts.Levels[^1].Title == LevelText.StillToAsk ? levels.Count - 1 : levels.Count, Change(session));
        }

        return levels;
    }

    /// <summary>What takes a search, and so is worked out only when it is asked for.</summary>
    private static Entry Change(Session session) =>
        new(LevelText.WhatWouldChange, s => s.Push(Detail(LevelText.WhatWouldChange, s.Services.Counterfactuals(session))));

    /// <summary>Kinds for teaching, with what each means for the person where the visit is saved.</summary>
    private static Entry SideBySide(string? path) => new("Kinds side by side", s => s.Push(ToolPages.Explain(s, path)));

    private static TextPage Detail(string title, ImmutableArray<string> lines) => new($"result {title}", [$"{title}.", .. lines], isDetail: true);

    private static Page WhyNot(Shell shell, Session session) => ToolPages.WhyNot(shell, aid => shell.Services.Why(session, aid));

    private static void Document(Shell shell, Visit visit)
    {
        if (visit.IsUnsaved || visit.Path is not { } path)
        {
            shell.Show("A document is made from what is saved. Save first.");
            return;
        }

        shell.Push(ToolPages.Documents(shell, path));
    }

    private static void GoBack(Shell shell)
    {
        if (shell.Visit is { } visit && visit.Engine.Back())
        {
            shell.Replace(QuestionPage.Make(visit, withTopic: true), "Going back.");
        }
    }
}
