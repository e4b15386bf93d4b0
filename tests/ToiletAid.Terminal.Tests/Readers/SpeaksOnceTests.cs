using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAid.Terminal.Tests.Readers;

/// <summary>Two real readers in front of the built program: each key says one thing, each screen is said once.</summary>
public sealed class SpeaksOnceTests
{
    private const string ModeLine = "Full screen. F2 or Control P: linear. F1 or Control G: help. F9 or F10: menu.";

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void The_start_screen_and_its_keys_are_said_once(string reader)
    {
        using var aloud = new Reader(reader, string.Empty);
        Said(aloud.Start("Number 1 to 8:"), $"{ModeLine} Toilet aid. Matches a person to the right kind of aid. 1. New assessment 2. Open a saved profile 3. Compare two visits 4. Calculators 5. Kinds side by side 6. Settings 7. Help 8. Leave Number 1 to 8:");
        Assert.Equal(["New assessment, 1 of 8"], aloud.Press(Keys.Down));
        Assert.Equal(["Open a saved profile, 2 of 8"], aloud.Press(Keys.Down));
        Assert.Equal(["New assessment, 1 of 8"], aloud.Press(Keys.Up));
        Assert.Equal(["Leave"], aloud.Press("8"));
        Assert.Equal(["Help, 7 of 8"], aloud.Press("h"));
        Assert.Equal(["New assessment, 1 of 8"], aloud.Press(Keys.Home));
        Said(aloud.Press(Keys.Enter), "How much is asked? 1. Quick, by observation 2. Full, everything that can matter 3. Measured, with goniometer, dynamometer, peg test and tape Number 1 to 3:");
        Assert.Equal(["Nothing is chosen. Number 1 to 3:"], aloud.Press(Keys.Enter));
        Assert.Equal(["Still nothing is chosen. Number 1 to 3:"], aloud.Press(Keys.Enter));
        Assert.Equal(["Nothing is chosen. Number 1 to 3:"], aloud.Press(Keys.Enter));
        Assert.Equal(["Quick, by observation"], aloud.Press("1"));
        Said(aloud.Press(Keys.F12), "The screen is hidden. Enter shows it again.");
        Said(aloud.Press(Keys.Enter), "How much is asked? 1. Quick, by observation 2. Full, everything that can matter 3. Measured, with goniometer, dynamometer, peg test and tape Quick, by observation");
    }

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void A_quick_assessment_says_each_key_once(string reader)
    {
        var model = new Model();
        using var aloud = new Reader(reader, "assess --depth quick");
        Said(aloud.Start(model.Answer), $"{ModeLine} {model.Whole}");
        while (model.Shell.Current is QuestionPage)
        {
            foreach (string key in Answering(model))
            {
                Hear(model, aloud, key);
            }
        }

        Assert.Equal("result", model.Shell.Current.Name);
    }

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void Every_kind_of_question_says_each_key_once(string reader)
    {
        var model = new Model(Depth.Full);
        using var aloud = new Reader(reader, "assess --depth full");
        aloud.Start(model.Answer);
        string[] keys =
        [
            Keys.Down, " ", Keys.Down, " ", " ", Keys.Up, " ", "0", Keys.Enter,
            Keys.Control('F'), Keys.Down, Keys.Enter, "0", Keys.Enter,
            Keys.Control('O'), Keys.Control('O'), Keys.F4, Keys.Enter, Keys.Enter, Keys.Enter, "0", Keys.Enter,
            Keys.Control('E'), Keys.Enter, Keys.Enter, Keys.F9, Keys.Down, Keys.Control('F'), Keys.Control('G'), Keys.Enter,
            Keys.Control('U'), Keys.Control('Y'), Keys.Control('C'), "1", Keys.Enter,
        ];
        foreach (string key in keys)
        {
            Hear(model, aloud, key);
        }
    }

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void Kinds_side_by_side_say_each_key_once(string reader)
    {
        var model = new Model(depth: null);
        using var aloud = new Reader(reader, string.Empty);
        aloud.Start(model.Answer);
        foreach (string key in (string[])["5", Keys.Enter, "1", "3", Keys.Enter])
        {
            Hear(model, aloud, key);
        }

        string next = string.Join(' ', aloud.Press(Keys.PageDown));
        Assert.Contains(next[..40], string.Join(' ', model.Shell.Lines), StringComparison.Ordinal);
        Hear(model, aloud, Keys.Enter);
        Assert.Equal("start", model.Shell.Current.Name);
    }

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void A_note_says_each_key_once(string reader)
    {
        var model = new Model();
        using var aloud = new Reader(reader, "assess --depth quick");
        aloud.Start(model.Answer);
        foreach (string key in (string[])[Keys.Control('K'), "L", "e", Keys.Enter, "R", Keys.Up, Keys.Down, Keys.Up, "t", Keys.Enter, Keys.Enter, Keys.Enter])
        {
            Hear(model, aloud, key);
        }

        Assert.IsAssignableFrom<QuestionPage>(model.Shell.Current);
        Assert.Equal(["Let", "R"], model.Shell.Visit!.Engine.Note.Lines);
    }

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void A_trial_says_each_key_once(string reader)
    {
        using var folder = new TempFolder();
        string file = folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
        var model = new Model(depth: null, trials: DateOnly.FromDateTime(DateTime.Now));
        using var aloud = new Reader(reader, string.Empty);
        aloud.Start(model.Answer);
        foreach (string key in (string[])["2", Keys.Enter, .. file.Select(c => c.ToString()), Keys.Enter, Keys.Control('D')])
        {
            bool typed = model.Shell.Current.IsTyping && key[0] > ' ';
            model.Press(key);
            _ = typed ? aloud.Type(key) : aloud.Press(key, model.Answer);
        }

        Assert.IsType<TrialPage>(model.Shell.Current);
        foreach (string key in (string[])
        [
            "9", Keys.Enter, Keys.Down, Keys.Down, Keys.Up, Keys.Enter, Keys.Down, Keys.Control('F'), Keys.Down, Keys.Enter, Keys.Control('U'), "6", Keys.Enter,
            Keys.Down, Keys.Enter, Keys.Up, "6", Keys.Enter, Keys.Control('U'), Keys.Control('U'), Keys.Down, " ", Keys.Down, " ", " ", Keys.Enter, "n", "o", Keys.Enter, Keys.Enter,
        ])
        {
            Hear(model, aloud, key);
        }

        Assert.Equal("profile", model.Shell.Current.Name);
    }

    [Theory]
    [InlineData(Reader.Yasr)]
    [InlineData(Reader.Fenrir)]
    public void Nothing_is_said_while_nobody_presses_a_key(string reader)
    {
        using var aloud = new Reader(reader, "assess --depth quick");
        aloud.Start("Numbers, or none:");
        Assert.Empty(aloud.Wait(TimeSpan.FromSeconds(10)));
        Assert.Single(aloud.Press(Keys.Down));
    }

    [Fact]
    public void A_whole_quick_assessment_says_little_more_than_the_linear_one()
    {
        var model = new Model();
        using var aloud = new Reader(Reader.Yasr, "assess --depth quick");
        int words = Words(aloud.Start(model.Answer));
        var typed = new List<string>();
        while (model.Shell.Current is QuestionPage page)
        {
            Assert.True(typed.Count < 100, $"{page.Name} does not take its answer.");
            var (line, keys) = model.AnswerWith("1");
            typed.Add(line);
            foreach (char key in keys)
            {
                model.Press(key.ToString());
                words += Words(aloud.Press(key.ToString()));
            }

            model.Press(Keys.Enter);
            words += model.Shell.Current is QuestionPage ? Words(aloud.Press(Keys.Enter, model.Answer)) : 0;
        }

        // The result is said brief first in one mode and whole in a pipe, so the questions alone are compared.
        string whole = Cli.Run(string.Join('\n', typed) + "\n", "assess", "--depth", "quick", "--linear").Output;
        int linear = Words([whole[..whole.IndexOf("Result:", StringComparison.Ordinal)]]);
        TestContext.Current.TestOutputHelper?.WriteLine($"{words} words in full screen, {linear} in linear mode");
        Assert.InRange(words / (double)linear, 0.8, 1.2);
    }

    /// <summary>Keys that answer the question in front, with a wander through its list.</summary>
    private static string[] Answering(Model model) => model.Shell.Current switch
    {
        ManyPage => [Keys.Down, Keys.Down, " ", " ", "0", Keys.Enter],
        OrderPage => [Keys.Down, " ", Keys.Down, " ", Keys.Enter],
        ChoicePage => [Keys.Down, Keys.Down, Keys.Up, Keys.Enter],
        _ => [Keys.Control('U')],
    };

    private static void Hear(Model model, Reader aloud, string key)
    {
        string error = model.Shell.Error, before = model.Answer;
        bool typed = model.Shell.Current.IsTyping;
        bool anew = model.Press(key);
        bool echoed = typed && model.Shell.Current.IsTyping && key.Length == 1 && key[0] > ' ';
        bool refused = model.Shell.Error != error && model.Shell.Error.Length > 0;
        string end = refused && before == model.Answer ? model.Shell.Error : model.Answer;
        var said = echoed ? aloud.Type(key) : aloud.Press(key, anew ? model.Answer : LastWord(end));
        if (anew)
        {
            // On a slow machine this may be long work, and then it is told once.
            Said(said, said is ["Working...", ..] ? $"Working... Done. {model.Whole}" : model.Whole);
        }
        else if (refused)
        {
            Said(said, before == model.Answer ? model.Shell.Error : $"{model.Shell.Error} {model.Answer}");
        }
        else if (echoed)
        {
            // What is typed is echoed by the reader or not, as the person set it; the line is not said again.
            Assert.True(string.Concat(said) is "" || string.Concat(said) == key, string.Join('|', said));
        }
        else
        {
            Assert.Equal([model.Answer], said);
        }
    }

    private static string LastWord(string text) => text.Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries).LastOrDefault() ?? string.Empty;

    private static void Said(IReadOnlyList<string> heard, string wanted) => Assert.Equal(Words(wanted), Words(string.Join(' ', heard)));

    /// <summary>Of a path one reader says the strokes and the other only the names.</summary>
    private static string Words(string text) => string.Join(' ', text.Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries));

    private static int Words(IEnumerable<string> said) => said.Sum(s => s.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Length);
}
