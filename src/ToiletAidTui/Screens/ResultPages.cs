using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Screens;

/// <summary>The result of a visit: its first part at once, the others from a list.</summary>
internal static class ResultPages
{
    /// <summary>The result of the visit under way.</summary>
    internal static Page Make(Shell shell, Visit visit)
    {
        var parts = shell.Desk.Result(visit.Ranked);
        return new ListPage("result", "Result.", First(parts),
        [
            .. Others(parts),
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
        return new ListPage("result", "Result.", First(parts), [.. Others(parts), new("Go back", s => s.Pop())]);
    }

    private static ImmutableArray<string> First(ImmutableArray<ResultPart> parts) => parts.IsEmpty ? [] : parts[0].Lines;

    private static IEnumerable<Entry> Others(ImmutableArray<ResultPart> parts) =>
        parts.Skip(1).Select(p => new Entry(p.Title, s => s.Push(new TextPage($"result {p.Title}", [$"{p.Title}.", .. p.Lines]))));

    private static void GoBack(Shell shell)
    {
        if (shell.Visit is { } visit && visit.Engine.Back())
        {
            shell.Replace(QuestionPage.Make(visit, withTopic: true), "Going back.");
        }
    }
}
