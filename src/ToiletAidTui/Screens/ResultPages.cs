using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Screens;

/// <summary>The result of a visit: its first part at once, the others from a list.</summary>
internal static class ResultPages
{
    internal const string PageName = "result";

    /// <summary>The result of the visit under way.</summary>
    internal static Page Make(Shell shell, Visit visit)
    {
        var parts = shell.Desk.Result(visit.Ranked);
        return new ListPage(PageName, "Result.", First(parts),
        [
            .. Others(parts),
            .. Questions(shell, visit.Ranked),
            new("Record a trial", s => s.Press(new(Act.Trial))),
            new("Write a note", s => s.Press(new(Act.Note))),
            new("Write a document", s => Document(s, visit)),
            new("Save", s => s.Press(new(Act.Save))),
            new("Answers so far", s => s.Press(new(Act.Answers))),
            new("Change the last answer", GoBack),
            new("Start screen", StartPages.Home),
            new("Leave", s => s.Press(new(Act.Leave))),
        ]);
    }

    /// <summary>The result of a visit that was saved before.</summary>
    internal static Page Saved(Shell shell, Profile profile)
    {
        var parts = shell.Desk.Result(profile.Latest);
        return new ListPage(PageName, "Result.", First(parts), [.. Others(parts), .. Questions(shell, profile.Latest), new("Record a trial", s => s.Press(new(Act.Trial))), new("Go back", s => s.Pop())]);
    }

    private static ImmutableArray<string> First(ImmutableArray<ResultPart> parts) => parts.IsEmpty ? [] : parts[0].Lines;

    private static IEnumerable<Entry> Others(ImmutableArray<ResultPart> parts) =>
        parts.Skip(1).Select(p => new Entry(p.Title, s => s.Push(new TextPage($"result {p.Title}", [$"{p.Title}.", .. p.Lines]))));

    /// <summary>What takes a search, and so is worked out only when it is asked for.</summary>
    private static Entry[] Questions(Shell shell, Session session) =>
    [
        new("What would change this", s => s.Push(new TextPage("what would change this", ["What would change this.", .. s.Desk.Counterfactuals(session)]))),
        new("Why not another kind", s => s.Push(ToolPages.WhyNot(shell, aid => s.Desk.Why(session, aid)))),
    ];

    private static void Document(Shell shell, Visit visit)
    {
        if (visit.IsUnsaved || visit.Path is not { } path)
        {
            shell.Show("A document is made from what is saved. Save first.");
            return;
        }

        shell.Push(ToolPages.Documents(path));
    }

    private static void GoBack(Shell shell)
    {
        if (shell.Visit is { } visit && visit.Engine.Back())
        {
            shell.Replace(QuestionPage.Make(visit, withTopic: true), "Going back.");
        }
    }
}
