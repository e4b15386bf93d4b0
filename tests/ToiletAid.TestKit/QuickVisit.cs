using System.Globalization;
using ToiletAid.App.Sessions;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;
using ToiletAidTui.Screens;

namespace ToiletAid.TestKit;

/// <summary>A quick visit of a person whose answers are known, by somebody who knows the keys: the answer to each question, and nothing else.</summary>
/// <param name="answers">What the person would answer.</param>
internal sealed class QuickVisit(Answers answers)
{
    /// <summary>The visit on the screens, before its first question.</summary>
    internal Model Model { get; } = new(Depth.Quick);

    /// <summary>The answer to the question in front: the line that is typed in linear mode, and the keys of the full screen.</summary>
    internal (string Line, string[] Keys) Answer()
    {
        var question = Model.Shell.Visit!.Engine.Current!.Question;
        return answers[question.Id]?.Value switch
        {
            AnswerValue.Choice c when Model.Shell.Current is ChoicePage => (Number(question, c.Option), [.. Digits(question, c.Option), Keys.Enter]),
            AnswerValue.Many { Options.IsEmpty: true } => ("none", ["0", Keys.Enter]),
            AnswerValue.Many m => (string.Join(' ', m.Options.Select(o => Number(question, o))), [.. m.Options.SelectMany(o => (string[])[.. Digits(question, o), " "]), Keys.Enter]),
            AnswerValue.Number n when Model.Shell.Current is TypedPage => Typed(AnswerWording.Typed(question, n)),
            _ => ("unknown", [Keys.Control('U')]),
        };
    }

    /// <summary>The lines of the whole visit in linear mode.</summary>
    internal string[] Lines()
    {
        var lines = new List<string>();
        while (Model.Shell.Current is QuestionPage)
        {
            var (line, keys) = Answer();
            lines.Add(line);
            Array.ForEach(keys, k => Model.Press(k));
        }

        return [.. lines];
    }

    /// <summary>What the linear mode of a terminal writes from its first line to the end of the brief result.</summary>
    internal static string Linear(Answers answers)
    {
        string[] lines = new QuickVisit(answers).Lines();
        var model = new Model(Depth.Quick);
        using var written = new StringWriter();
        using var input = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"));
        new LinearPages(model.Shell, new SpeechLines(written, 0), new LineReader(input)) { AfterResult = () => false }.Run();
        string all = written.ToString();
        int choices = all.LastIndexOf("Choose 1 ", StringComparison.Ordinal);
        return choices < 0 ? throw new InvalidOperationException($"no result is told:\n{all}") : all[..choices];
    }

    /// <summary>What the full screen writes: the mode line, each new screen, each answer line that is not an echo of typing; up to the end of the brief result.</summary>
    internal static IEnumerable<string> FullScreen(Answers answers)
    {
        var visit = new QuickVisit(answers);
        var model = visit.Model;
        yield return model.ModeLine;
        yield return model.Whole;
        while (model.Shell.Current is QuestionPage)
        {
            foreach (string key in visit.Answer().Keys)
            {
                bool typed = model.Shell.Current.IsTyping;
                bool anew = model.Press(key);
                if (anew || !typed)
                {
                    yield return !anew ? model.Answer : model.Shell.Current is QuestionPage ? model.Whole : string.Join(' ', model.Shell.Lines.SkipLast(1));
                }
            }
        }
    }

    private static (string Line, string[] Keys) Typed(string text) => (text, [.. text.Select(c => c.ToString()), Keys.Enter]);

    private static string Number(Question question, string option) => (question.Options.IndexOf(question.FindOption(option)!) + 1).ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<string> Digits(Question question, string option) => Number(question, option).Select(c => c.ToString());
}
