using ToiletAid.App.Sessions;
using ToiletAid.App.Wording;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>A question of the interview. The words are those of the linear mode.</summary>
internal abstract class QuestionPage : Page
{
    private static readonly HowObtained[] Hows = Enum.GetValues<HowObtained>();

    private string _retry = string.Empty;
    private string _error = string.Empty;
    private HowObtained? _how;

    private protected QuestionPage(Visit visit, bool withTopic)
        : this(visit, [.. QuestionText.Lines(visit.Engine, withTopic)])
    {
    }

    private protected QuestionPage(Visit visit, IReadOnlyList<string> lines)
    {
        Visit = visit;
        Step = visit.Engine.Current!;
        Lines = lines;
    }

    internal override string Name => $"question {Step.Question.Id}";

    internal override IReadOnlyList<string> Lines { get; }

    internal override string Error => _error;

    /// <summary>The visit that it belongs to.</summary>
    protected Visit Visit { get; }

    /// <summary>What is asked.</summary>
    protected Step Step { get; }

    /// <summary>What has to be done, as the linear mode prompts for it.</summary>
    protected string Prompt => _retry.Length > 0 ? $"{_retry}{HowSuffix}:" : $"{QuestionText.Prompt(Visit.Engine).TrimEnd(':')}{HowSuffix}:";

    /// <summary>How the answer was obtained, for the end of the answer line; empty while it is the usual way.</summary>
    protected string HowSuffix => _how is { } how ? $", {Words.Of(how)}" : string.Empty;

    /// <summary>The page for what is asked now.</summary>
    internal static QuestionPage Make(Visit visit, bool withTopic) => visit.Engine.Current!.Question.Kind switch
    {
        QuestionKind.Choice => new ChoicePage(visit, withTopic),
        QuestionKind.Many => new ManyPage(visit, withTopic),
        QuestionKind.Order => new OrderPage(visit, withTopic),
        _ => new TypedPage(visit, withTopic),
    };

    internal override IEnumerable<string> Help() => QuestionText.Help(Step.Question);

    internal override void Press(Shell shell, KeyPress key)
    {
        switch (key.Action)
        {
            case KeyAction.Unknown:
                Next(shell, Visit.Engine.Unknown().Text);
                break;
            case KeyAction.How:
                _how = Hows[(Array.IndexOf(Hows, _how ?? Step.Question.Usually) + 1) % Hows.Length];
                break;
            case KeyAction.Finish:
                Next(shell, Visit.Engine.Finish());
                break;
            case KeyAction.Type when this is not TypedPage:
                shell.Swap(new TypedPage(Visit, Lines));
                break;
            default:
                Answering(shell, key);
                break;
        }
    }

    internal override void Back(Shell shell)
    {
        if (Visit.Engine.Back())
        {
            shell.Replace(Make(Visit, withTopic: true), "Going back.");
            return;
        }

        Refuse("This is the first question.", string.Empty);
    }

    /// <summary>Acts on the keys that answer.</summary>
    protected abstract void Answering(Shell shell, KeyPress key);

    /// <summary>Hands in an answer in the words that would be typed, and goes on when it is taken.</summary>
    protected void Submit(Shell shell, string text)
    {
        string how = _how is { } h && text.Length > 0 ? $" {Words.Of(h)}" : string.Empty;
        var reply = Visit.Engine.Submit(text + how);
        if (reply.Accepted)
        {
            Next(shell, IsSaid(shell, reply.Text) ? string.Empty : reply.Text);
            return;
        }

        Refuse($"Error: {reply.Text}", reply.Retry);
    }

    /// <summary>Says that a digit names no option, in the words of a typed answer.</summary>
    protected void RefuseDigit(string digit) => Refuse($"Error: {digit} is not a number from 1 to {Step.Question.Options.Length}.", $"Not 1 to {Step.Question.Options.Length}. Number");

    /// <summary>Says why nothing came of it.</summary>
    protected void Refuse(string error, string retry) => (_error, _retry) = (error, retry);

    /// <summary>True where the answer line said the answer already: twice it would be one time too many, and a reader that compares frames may leave it out.</summary>
    private bool IsSaid(Shell shell, string reply)
    {
        string answer = reply.TrimEnd('.');
        return !shell.Services.OneKey && AnswerForms.Any(f => f == answer || f.StartsWith(answer + ", ", StringComparison.Ordinal));
    }

    private void Next(Shell shell, string reply)
    {
        bool newTopic = Visit.Engine.Current is { } next && next.Question.Topic != Step.Question.Topic;
        if (Visit.Engine.Current is null)
        {
            ResultPages.Open(shell, Visit, reply);
            return;
        }

        shell.Replace(Make(Visit, newTopic), reply);
    }
}
