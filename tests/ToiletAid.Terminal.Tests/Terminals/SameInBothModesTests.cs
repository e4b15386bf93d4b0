using System.Globalization;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>The same answers give the same file and the same result, whichever mode took them and however often it changed.</summary>
public sealed class SameInBothModesTests : IDisposable
{
    private readonly Home _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Linear_full_screen_and_a_change_at_every_question_write_the_same_file()
    {
        string[] linear = Answers(typed: true), keys = Answers(typed: false);
        string byLine = Path.Combine(_home.Path, "line.json"), onScreen = Path.Combine(_home.Path, "screen.json"), both = Path.Combine(_home.Path, "both.json");

        string first = "Prefers the left side", second = "Größe 38, sister helps";
        var (code, output, _) = Cli.Run($"note\n{first}\n{second}\n\n{string.Join('\n', linear)}\n", "assess", "--depth", "quick", "--save", byLine, "--person", "K-1", "--date", "2026-03-09");
        Assert.Equal(0, code);
        Assert.Contains("Place 1.", output, StringComparison.Ordinal);

        using (var terminal = Run(onScreen, "--full-screen"))
        {
            terminal.Until("1 of ");
            Note(terminal, first, second);
            for (int i = 0; i < keys.Length; i++)
            {
                terminal.Send(keys[i] + Keys.Enter);
                terminal.Until(i + 1 < keys.Length ? $"{Text(i + 2)} of " : "Result.");
            }

            string result = terminal.Quiet();
            Save(terminal);
            Assert.All(output.Split('\n').SkipWhile(l => !l.EndsWith("Result:", StringComparison.Ordinal)).Skip(1).Take(1), l => Assert.Contains(l[..Math.Min(40, l.Length)], result + terminal.All, StringComparison.Ordinal));
        }

        using (var terminal = Run(both, "--full-screen"))
        {
            terminal.Until("1 of ");
            Note(terminal, first);
            terminal.Send(Keys.F2);
            terminal.Until("1 of");
            terminal.Send($"note {second}\n");
            terminal.Until("Line 2 is kept.");
            terminal.Send("screen\n");
            terminal.Until("1 of");
            for (int i = 0; i < keys.Length; i++)
            {
                bool line = i % 2 == 0;
                terminal.Send(line ? Keys.F2 : "screen\n");
                terminal.Until($"{Text(i + 1)} of ");
                terminal.Send(line ? linear[i] + "\n" : keys[i] + Keys.Enter);
                terminal.Until(i + 1 < keys.Length ? $"{Text(i + 2)} of " : "Result.");
            }

            if (keys.Length % 2 == 1)
            {
                terminal.Quiet();
                terminal.Send("screen\n");
                terminal.Until("Result.");
            }

            Save(terminal);
        }

        Assert.Contains($"\"{second}\"", File.ReadAllText(byLine), StringComparison.Ordinal);
        Assert.Equal(File.ReadAllBytes(byLine), File.ReadAllBytes(onScreen));
        Assert.Equal(File.ReadAllBytes(byLine), File.ReadAllBytes(both));
    }

    [Theory]
    [InlineData("--linear", "\n")]
    [InlineData("--full-screen", Keys.Enter)]
    public void Kinds_side_by_side_are_read_in_both_modes(string mode, string enter)
    {
        using var terminal = new PtySession([BuiltProgram.Path, mode], _home.Environment());
        terminal.Until("Number 1 to 8:");
        terminal.Send("5" + enter);
        terminal.Until("Numbers:");
        terminal.Send("5 13" + enter);
        terminal.Until("Who might choose which: toilet-paper tongs and");
    }

    [Fact]
    public void A_trial_whose_mode_changes_at_every_question_writes_the_file_of_the_command()
    {
        string[] answers = ["1", "3", "6", "yes", "6", "4", "2", "none", "yes", "5", "2", "7", "4", "4 12"];
        string byCommand = Path.Combine(_home.Path, "command.json"), onScreen = Path.Combine(_home.Path, "screen.json");
        foreach (string file in (string[])[byCommand, onScreen])
        {
            File.Copy(DemoPeople.File("k-014-stiff-shoulder"), file);
        }

        string today = DateTime.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        Assert.Equal(0, Cli.Run(string.Join('\n', answers) + "\n", "trial", byCommand, "--date", today).Code);
        using (var terminal = new PtySession([BuiltProgram.Path, "--full-screen"], _home.Environment()))
        {
            terminal.Until("Number 1 to 8:");
            terminal.Send("2" + Keys.Enter);
            terminal.Until("Code or file:");
            terminal.Send(onScreen + Keys.Enter);
            terminal.Until("Profile of K-014.");
            terminal.Send(Keys.Control('D'));
            for (int i = 0; i < answers.Length; i++)
            {
                terminal.Until($"{Text(i + 1)}. ");
                terminal.Quiet();
                bool line = i % 2 == 1;
                terminal.Send(line ? answers[i] + "\n" : answers[i] + Keys.Enter);
                if (i + 1 < answers.Length)
                {
                    terminal.Until($"{Text(i + 2)}. ");
                    terminal.Quiet();
                    terminal.Send(line ? "screen\n" : Keys.F2);
                }
            }

            terminal.Until("Saved as K-014 in");
            terminal.Kill(15);
            terminal.Exit();
        }

        Assert.Equal(File.ReadAllBytes(byCommand), File.ReadAllBytes(onScreen));
    }

    private static void Note(PtySession terminal, params string[] lines)
    {
        terminal.Send(Keys.Control('K'));
        terminal.Until("Line 1, Enter alone ends:");
        for (int i = 0; i < lines.Length; i++)
        {
            terminal.Send(lines[i] + Keys.Enter);
            terminal.Until($"Line {Text(i + 2)}, Enter alone ends:");
        }

        terminal.Send(Keys.Enter);
        terminal.Until("1 of");
    }

    private static void Save(PtySession terminal)
    {
        terminal.Quiet();
        terminal.Send(Keys.Control('S'));
        terminal.Until("Saved as K-1 in");
        terminal.Send(Keys.Control('C'));
        Assert.Equal(0, terminal.Exit());
    }

    /// <summary>Answers to a quick interview, as they are typed in linear mode or as the keys before Enter on the screen.</summary>
    private static string[] Answers(bool typed)
    {
        var answers = new List<string>();
        var model = new Model(Depth.Quick);
        while (model.Shell.Current is QuestionPage page)
        {
            Assert.True(answers.Count < 100, $"{page.Name} does not take its answer.");

            // Feeling that was lost of late would stop the visit before it comes to a result.
            var (line, keys) = model.AnswerWith(page.Name == $"question {QuestionIds.FeelingSince}" ? "1" : "2");
            answers.Add(typed ? line : keys);
            foreach (char key in keys)
            {
                model.Press(key.ToString());
            }

            model.Press(Keys.Enter);
        }

        return [.. answers];
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private PtySession Run(string file, string mode) =>
        new([BuiltProgram.Path, "assess", "--depth", "quick", mode, "--save", file, "--person", "K-1", "--date", "2026-03-09"], _home.Environment());
}
