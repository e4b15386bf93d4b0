using System.Text.RegularExpressions;
using ToiletAid.Core.Person;
using ToiletAidTui.FullScreen;
using ToiletAidTui.Keys;
using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>A walk through every page: each entry of each list, every question, every step of a trial, on a small, a usual and a large terminal.</summary>
public sealed partial class EveryPageTests
{
    private static readonly (int Columns, int Rows)[] Sizes = [(40, 12), (80, 24), (200, 50)];

    private const int Columns = 80;
    private const int Rows = 30;

    private readonly HashSet<string> _seen = [];
    private int _compared;
    private readonly SortedSet<string> _names = [];

    [Fact]
    public void Nothing_is_cut_and_the_line_with_the_cursor_is_whole_on_every_page()
    {
        Walk(new Model(depth: null));
        var two = Hands.Opened(Path.Combine(DemoPeople.Folder, "visits", "g-226-sore-hands.json"));
        Walk(two);
        foreach (string file in DemoPeople.Files)
        {
            Walk(Hands.Opened(file));
        }

        Questions(new Model(Depth.Measured, all: true));
        Trial();
        TestContext.Current.TestOutputHelper?.WriteLine($"{_seen.Count} pages at {Sizes.Length} sizes: {string.Join(", ", _names)}");
        Assert.All(
            (string[])["start", "depth", "open", "compare", "calculators", "calculator grip", "settings", "setting", "help", "menu", "profile", "result", "result Reasons", "result Cautions", "why not", "why not this", "document", "document result", "note", "trial", "code", "comparison", "leave"],
            name => Assert.Contains(name, _names));
        TestContext.Current.TestOutputHelper?.WriteLine($"{_compared} keys changed no row but that of the answer.");
        Assert.InRange(_compared, 500, int.MaxValue);
        Assert.True(_seen.Count > 200, $"only {_seen.Count} pages");
    }

    /// <summary>Checks the page in front and all that its entries lead to, and comes back to it.</summary>
    private void Walk(Model model, int deep = 0)
    {
        var (shell, page) = (model.Shell, model.Shell.Current);
        if (!Check(shell) || deep > 5)
        {
            return;
        }

        for (int i = 0; page is ListPage list && i < list.Entries.Count; i++)
        {
            Once(model, Keys.Down);
            Check(shell);
        }

        if (deep == 0)
        {
            foreach (string key in (string[])[Keys.Control('G'), Keys.F9, Keys.F12, Keys.Control('C'), Keys.Control('E'), Keys.Control('K')])
            {
                Visit(model, page, deep, () => model.Press(key));
            }
        }

        foreach (var entry in page is ListPage { Entries: var entries } ? entries : [])
        {
            Visit(model, page, deep, () => entry.Choose(shell));
        }
    }

    private void Visit(Model model, Page page, int deep, Action go)
    {
        var shell = model.Shell;
        go();
        if (shell.IsHidden)
        {
            Check(shell);
            model.Press(Keys.Enter);
        }

        if (shell.Current != page && shell.Ending == Ending.None)
        {
            Walk(model, deep + 1);
        }

        shell.Ending = Ending.None;
        for (int i = 0; shell.Current != page && i < 4; i++)
        {
            shell.Press(new(KeyAction.Back));
            shell.Ending = Ending.None;
        }

        if (shell.Current != page)
        {
            shell.Push(page);
        }
    }

    /// <summary>Every question with each of its options, and with a mistake.</summary>
    private void Questions(Model model)
    {
        while (model.Shell.Current is QuestionPage)
        {
            Check(model.Shell);
            model.Press(Keys.Control('G'));
            Check(model.Shell);
            model.Press(Keys.Escape);
            foreach (var option in model.Shell.Visit!.Engine.Current!.Question.Options)
            {
                Once(model, Keys.Down);
                Check(model.Shell);
                Once(model, " ");
                Check(model.Shell);
            }

            model.Press(Keys.F4);
            model.Type("Something that is not an answer to this");
            Check(model.Shell);
            model.Press(Keys.Control('U'));
        }

        Walk(model);
        model.Press(Keys.Control('S'));
        Check(model.Shell);
        model.Press(Keys.Escape);
        model.Press(Keys.Control('C'));
        Check(model.Shell);
    }

    private void Trial()
    {
        using var folder = new TempFolder();
        var model = Hands.Opened(folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder"))));
        model.Choose("Record a trial");
        string[] answers = ["1", "03", "06", "yes", "06", "4", "2", "none", "yes", "06", "4", "2", "3", "none"];
        for (int i = 0; model.Shell.Current is TrialPage && i < 40; i++)
        {
            Check(model.Shell);
            model.Press(Keys.Down);
            Check(model.Shell);
            model.Press(Keys.Control('U'));
            Check(model.Shell);
            if (model.Shell.Error.Length > 0)
            {
                model.Type(answers[Math.Min(i, answers.Length - 1)]);
            }
        }

        Check(model.Shell);
    }

    /// <summary>
    /// A reader that compares screens line by line says every row that differs: moving to an entry, or choosing it, may change the answer line alone.
    /// So readers of a Windows console do.
    /// </summary>
    private void Once(Model model, string key)
    {
        var (page, error) = (model.Shell.Current, model.Shell.Error);
        var before = ScreenRows.Lay(model.Shell, Columns, Rows, 0);
        model.Press(key);
        if (model.Shell.Current != page || error.Length > 0 || model.Shell.Error.Length > 0)
        {
            return;
        }

        var after = ScreenRows.Lay(model.Shell, Columns, Rows, 0);
        Assert.True(before.Rows.AsSpan(0, before.AnswerRow).SequenceEqual(after.Rows.AsSpan(0, after.AnswerRow)), $"{page.Name}: more than the answer line changed");
        _compared++;
    }

    /// <summary>Checks what is shown at each size; false when it was checked before.</summary>
    private bool Check(Shell shell)
    {
        var said = ScreenText.Of(shell);
        bool isNew = _seen.Add($"{shell.Current.Name}\n{string.Join('\n', said.Lines)}");
        _names.Add(shell.Current.Name);
        foreach (var (columns, rows) in Sizes)
        {
            Check(shell, said, columns, rows);
        }

        return isNew;
    }

    private static void Check(Shell shell, ScreenText said, int columns, int rows)
    {
        string where = $"{shell.Current.Name} at {columns} by {rows}";
        string shown = string.Empty;
        var first = ScreenRows.Lay(shell, columns, rows, 0);
        string answer = said.Answer(columns - 1);
        for (int part = 0; part < first.Parts; part++)
        {
            var laid = ScreenRows.Lay(shell, columns, rows, part);
            Assert.Equal(rows, laid.Rows.Length);
            Assert.True(laid.Rows.All(r => r.Length < columns), $"{where}: a row is too long");
            Assert.True(Solid(string.Concat(laid.Rows[laid.AnswerRow..])) == Solid(answer), $"{where}: the answer line is not whole, {string.Join('|', laid.Rows[laid.AnswerRow..])} for {answer}");
            Assert.True(answer.Length >= columns || laid.Rows[(laid.AnswerRow + 1)..].All(string.IsNullOrEmpty), $"{where}: the answer line takes more than its row");
            Assert.InRange(laid.CursorRow, laid.AnswerRow, rows - 1);
            string text = Solid(string.Concat(laid.Rows[laid.FixedRows..laid.AnswerRow]));
            Assert.True(text.EndsWith(Solid(said.Error), StringComparison.Ordinal), $"{where}: the error is not whole");
            text = text[..^Solid(said.Error).Length];
            shown += first.Parts > 1 ? PartLine().Replace(text, string.Empty) : text;
        }

        Assert.True(shown == Solid(string.Concat(said.Lines)), $"{where}: text is cut\n{shown}\n{Solid(string.Concat(said.Lines))}");
    }

    private static string Solid(string text) => string.Concat(ReadableText.Shown(text).Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex(@"Part\d+of\d+\.Page(Up|Down)\.$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PartLine();
}
