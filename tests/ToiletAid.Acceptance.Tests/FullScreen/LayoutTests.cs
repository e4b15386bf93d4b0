extern alias TerminalGui;

using ToiletAid.App.Files;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;
using Key = TerminalGui::Terminal.Gui.Input.Key;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>Every question on a small, a usual and a large terminal.</summary>
[Collection(nameof(OneScreen))]
public sealed class LayoutTests
{
    [Theory]
    [InlineData(40, 12)]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void Every_question_fits_and_has_its_cursor_on_the_answer_line(int columns, int rows)
    {
        var model = new Model(Depth.Full, all: true);
        using var stage = new Stage(model.Shell, columns, rows);
        int questions = 0;
        while (model.Shell.Current is QuestionPage page)
        {
            questions++;
            Check(stage, model, columns, rows);
            stage.Press(Key.CursorDown);
            Check(stage, model, columns, rows);
            string all = string.Join(' ', Text(stage));
            for (int part = 1; part < stage.Laid.Parts; part++)
            {
                stage.Press(Key.PageDown);
                Check(stage, model, columns, rows);
                all += ' ' + string.Join(' ', Text(stage));
            }

            Assert.All(page.Lines.SelectMany(l => l.Split(' ')), word => Assert.Contains(word, all, StringComparison.Ordinal));
            stage.Press(Key.U.WithCtrl);
        }

        Assert.True(questions > 30, $"only {questions} questions were asked");
        Check(stage, model, columns, rows);
    }

    [Fact]
    public void A_new_size_keeps_the_place()
    {
        var model = new Model(all: true);
        using var stage = new Stage(model.Shell, 80, 24);
        stage.Press(Key.CursorDown);
        stage.Press(Key.CursorDown);
        stage.Size(40, 12);
        Check(stage, model, 40, 12);
        stage.Size(200, 50);
        Assert.Equal("No: new retention or incontinence, 2 of 10", stage.Rows[stage.Laid.AnswerRow]);
    }

    [Fact]
    public void Moving_changes_the_answer_line_and_nothing_else()
    {
        var model = new Model(all: true);
        using var stage = new Stage(model.Shell, 80, 24);
        stage.Press(Key.D0);
        stage.Press(Key.Enter);
        for (int i = 0; i < 12; i++)
        {
            string[] before = stage.Rows;
            stage.Press(i % 3 == 2 ? Key.Space : Key.CursorDown);
            var changed = Enumerable.Range(0, before.Length).Where(y => before[y] != stage.Rows[y]).ToList();
            Assert.True(changed.Count == 0 || changed is [var only] && only == stage.Laid.AnswerRow, string.Join(' ', changed));
        }
    }

    [Fact]
    public void Down_goes_through_every_entry_once_from_the_top_and_Up_comes_back()
    {
        var model = new Model(Depth.Full, all: true);
        while (model.Shell.Current is QuestionPage page)
        {
            string[] options = [.. model.Shell.Visit!.Engine.Current!.Question.Options.Select(o => o.Label)];
            string[] down = [.. options.Select(_ => Pressed(Keys.Down))], up = [.. options.Skip(1).Select(_ => Pressed(Keys.Up))];
            Assert.All(options.Zip(down), pair => Assert.Contains(pair.First, pair.Second, StringComparison.OrdinalIgnoreCase));
            Assert.Equal(down.Reverse().Skip(1), up);
            model.Press(Keys.Control('U'));
        }

        string Pressed(string key)
        {
            model.Press(key);
            return model.Answer;
        }
    }

    /// <summary>A label is short so that the answer line holds it whole where it is narrowest: 40 columns, and 40 cells of braille.</summary>
    [Fact]
    public void Labels_have_at_most_30_characters_and_stand_whole_on_40_columns()
    {
        Assert.All(BuiltIn.Questions().All.SelectMany(q => q.Options), o => Assert.InRange(o.Label.Length, 1, 30));
        var model = new Model(Depth.Measured, all: true);
        while (model.Shell.Current is QuestionPage)
        {
            var question = model.Shell.Visit!.Engine.Current!.Question;
            foreach (var option in model.Shell.Current is TypedPage ? [] : question.Options)
            {
                model.Press(Keys.Down);
                string answer = ScreenText.Of(model.Shell).Answer(39);
                Assert.InRange(answer.Length, 1, 39);
                Assert.Contains(option.Label, answer, StringComparison.OrdinalIgnoreCase);
                Assert.Contains(model.Shell.Current.Lines, l => l.EndsWith(question.Safety ? option.Meaning ?? option.Label : option.Label, StringComparison.Ordinal));
            }

            model.Press(Keys.Control('U'));
        }
    }

    [Fact]
    public void Captures_of_the_screens_read_as_approved()
    {
        var captures = new List<string> { "# Screens at 80 columns and 24 rows", string.Empty, "The sign \\_ is the place of the cursor." };
        void Capture(Stage stage, Model model)
        {
            string[] shown = [.. stage.Rows];
            shown[stage.Laid.CursorRow] = shown[stage.Laid.CursorRow].PadRight(stage.Laid.CursorColumn).Insert(stage.Laid.CursorColumn, "_");
            captures.Add($"\n## {model.Shell.Current.Name}\n\n```text\n{string.Join('\n', shown).TrimEnd()}\n```");
        }

        Beginning(Capture);
        Visiting(Capture);
        Trying(Capture);
        Golden.Match(string.Join('\n', captures) + "\n", "Screens.md");
    }

    private static void Beginning(Action<Stage, Model> capture)
    {
        var start = new Model(depth: null);
        using var stage = new Stage(start.Shell, 80, 24);
        capture(stage, start);
        foreach (var key in (Key[])[Key.D1, Key.D5, Key.D6, Key.D3, Key.D4])
        {
            stage.Press(key);
            stage.Press(Key.Enter);
            capture(stage, start);
            stage.Press(Key.F.WithCtrl);
        }

        foreach (var key in (Key[])[Key.D4, Key.Enter, Key.D1, Key.Enter])
        {
            stage.Press(key);
        }

        capture(stage, start);
    }

    private static void Visiting(Action<Stage, Model> capture)
    {
        var visit = new Model(Depth.Full, all: true);
        using var stage = new Stage(visit.Shell, 80, 24);
        void Captured(params ReadOnlySpan<Key> keys)
        {
            foreach (var key in keys)
            {
                stage.Press(key);
            }

            capture(stage, visit);
        }

        Captured(Key.F1);
        Captured(Key.Enter, Key.F9);
        stage.Press(Key.F.WithCtrl);
        var seen = new HashSet<QuestionKind>();
        while (visit.Shell.Current is QuestionPage)
        {
            if (seen.Add(visit.Shell.Visit!.Engine.Current!.Question.Kind))
            {
                Captured(Key.CursorDown);
            }

            stage.Press(Key.U.WithCtrl);
        }

        Captured(Key.K.WithCtrl);
        Captured([.. "Left first".Select(c => new Key(c)), Key.Enter]);
        Captured(Key.Enter, Key.C.WithCtrl);
        Captured(Key.D2, Key.Enter);
    }

    private static void Trying(Action<Stage, Model> capture)
    {
        using var folder = new TempFolder();
        string file = folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
        var model = Hands.Opened(file);
        using var stage = new Stage(model.Shell, 80, 24);
        capture(stage, model);
        model.Choose("Write a document");
        stage.Press(Key.Home);
        capture(stage, model);
        stage.Press(Key.Esc);
        foreach (var key in (Key[])[Key.D.WithCtrl, Key.D1, Key.Enter, Key.CursorDown])
        {
            stage.Press(key);
            if (key != Key.D1)
            {
                capture(stage, model);
            }
        }
    }

    private static string[] Text(Stage stage) => stage.Rows[stage.Laid.FixedRows..stage.Laid.AnswerRow];

    private static void Check(Stage stage, Model model, int columns, int rows)
    {
        Assert.Equal(rows, stage.Laid.Rows.Length);
        Assert.All(stage.Laid.Rows, row => Assert.InRange(row.Length, 0, columns - 1));
        Assert.Equal(stage.Laid.Rows.Select(r => r.TrimEnd()), stage.Rows.Take(rows));
        Assert.InRange(stage.Laid.CursorRow, stage.Laid.AnswerRow, rows - 1);
        string answer = string.Join(' ', stage.Laid.Rows[stage.Laid.AnswerRow..]).Trim();
        Assert.Equal(ScreenText.Of(model.Shell).Answer(columns - 1).Trim(), answer);
        Assert.StartsWith("Full screen. F2 or Control P: linear.", stage.Rows[0], StringComparison.Ordinal);
    }
}
