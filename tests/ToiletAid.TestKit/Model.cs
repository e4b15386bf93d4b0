using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Trials;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Commands;
using ToiletAidTui.FullScreen;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Screens;
using ToiletAidTui.Settings;
using ToiletAidTui.Visits;

namespace ToiletAid.TestKit;

/// <summary>The screens without a terminal: what ought to be said is read off here, and heard from the reader.</summary>
internal sealed class Model
{
    /// <summary>Sets the screens up.</summary>
    /// <param name="depth">Depth of the interview; null for the start screen.</param>
    /// <param name="all">True to ask everything, whether or not it can matter.</param>
    /// <param name="passphrase">The passphrase that the program was given.</param>
    /// <param name="trials">Day of the trials; a week after that of the visits when left out.</param>
    /// <param name="folder">The user's folder for data; one that is not there when left out.</param>
    /// <param name="oneKey">True when an answer out of several takes one key.</param>
    internal Model(Depth? depth = Depth.Quick, bool all = false, string? passphrase = null, DateOnly? trials = null, string? folder = null, bool oneKey = false)
    {
        var knowledge = BuiltIn.Knowledge();
        var advisor = new Advisor(knowledge, new());
        var planner = QuestionPlanner.For(knowledge);
        Func<Depth, Answers, ImmutableArray<Question>> open = all ? (d, answers) => OpenQuestions.Open(knowledge.Questions, d, answers) : planner.Open;
        var files = new ProfileFile(knowledge.Questions);
        var parts = new AdviceParts(knowledge, advisor, planner, 3);
        var functions = new ScreenFunctions(Nobody, knowledge);
        var settings = new SettingsReader(_ => null, string.Empty, string.Empty);
        Shell = new(new()
        {
            Questions = knowledge.Questions,
            Open = open,
            Files = files,
            Profiles = new(name => name == "XDG_DATA_HOME" ? folder ?? Nowhere : null),
            Passphrase = () => passphrase,
            Know = typed => passphrase = typed,
            OneKey = oneKey,
            Keys = KeyMap.Make(new Dictionary<string, string>(), out _),
            Today = () => new DateOnly(2026, 3, 9),
            Result = parts.Of,
            Ended = parts.Ended,
            Why = parts.Why,
            Counterfactuals = parts.Counterfactuals,
            LookFor = parts.LookFor,
            Article = parts.Article,
            Verdict = parts.Verdict,
            KeepArticle = (interview, path) => FitsCommand.Keep(interview, path, new(2026, 3, 9)).Said,
            Trial = (Profile profile, out ImmutableArray<string> faults) => TrialRecording.Begin(knowledge, advisor, profile, trials ?? new DateOnly(2026, 3, 16), trials ?? new DateOnly(2026, 3, 16), out faults),
            Kinds = [.. knowledge.Catalogue.Aids.Select(a => (a.Id, a.Name))],
            Calculators = functions.Calculators,
            Compare = functions.Compare,
            Explain = functions.Explain,
            Document = functions.Document,
            Settings = (out string? fault) => settings.Read(new Dictionary<string, string>(), out fault),
            Keep = (_, _) => null,
        });
        if (depth is { } asked)
        {
            StartPages.Begin(Shell, new Visit(knowledge.Questions, open, asked, new DateOnly(2026, 3, 9)) { Profiles = Shell.Services.Profiles });
        }
        else
        {
            Shell.Push(StartPages.Start());
        }
    }

    internal Shell Shell { get; }

    private static string Nowhere { get; } = Path.Combine(Path.GetTempPath(), "toiletaid-nobody");

    private static Terminal Nobody { get; } = new() { Input = Stream.Null, Output = TextWriter.Null, Error = TextWriter.Null };

    /// <summary>The answer line on a terminal of 80 columns.</summary>
    internal string Answer => ScreenText.Of(Shell).Answer(79).Trim();

    /// <summary>The whole screen below the mode line, top to bottom, on a terminal of 80 columns and 24 rows.</summary>
    internal string Whole => ScreenRows.Lay(Shell, 80, 24, 0) is var rows ? string.Join(' ', rows.Rows[rows.FixedRows..]) : string.Empty;

    /// <summary>The rows that every screen has at its top, on a terminal of 80 columns.</summary>
    internal string ModeLine => ScreenRows.Lay(Shell, 80, 24, 0) is var rows ? string.Join(' ', rows.Rows[..rows.FixedRows]) : string.Empty;

    /// <summary>An answer to the question in front, as it is typed in linear mode and as the keys before Enter on the screen.</summary>
    /// <param name="option">The number that is taken of several.</param>
    internal (string Line, string Keys) AnswerWith(string option) => Shell.Current switch
    {
        ManyPage => ("none", "0"),
        OrderPage => ("1", "1 "),
        TypedPage => ("74", "74"),
        _ => (option, option),
    };

    /// <summary>Presses a key as a terminal sends it; true when a screen is to be said from its top.</summary>
    internal bool Press(string key)
    {
        int telling = Shell.Telling;
        Shell.Press(key switch
        {
            Keys.Down => new(KeyAction.Down),
            Keys.Up => new(KeyAction.Up),
            Keys.Enter => new(KeyAction.Enter),
            Keys.Home => new(KeyAction.First),
            Keys.End => new(KeyAction.Last),
            Keys.Escape => new(KeyAction.Back),
            Keys.Backspace => new(KeyAction.Erase),
            { Length: 1 } when key[0] < ' ' => new(Shell.Services.Keys.Find($"Ctrl+{(char)(key[0] + 'A' - 1)}")!.Value),
            Keys.F4 => new(KeyAction.Type),
            Keys.F9 => new(KeyAction.Menu),
            Keys.F12 => new(KeyAction.Hide),
            _ => new(KeyAction.Text, key),
        });
        return telling != Shell.Telling;
    }
}
