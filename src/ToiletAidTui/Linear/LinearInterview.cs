using ToiletAid.App.Sessions;
using ToiletAid.Core.Interview;
using ToiletAidTui.Host;

namespace ToiletAidTui.Linear;

/// <summary>The interview line by line: nothing is ever redrawn, each line is written once.</summary>
/// <param name="engine">The interview.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
public sealed class LinearInterview(InterviewEngine engine, SpeechLines lines, LineReader input, bool echoesTyping)
{
    private string _topic = string.Empty;

    /// <summary>Asks until nothing is left to ask, or the person stops.</summary>
    public InterviewEnd Run()
    {
        while (engine.Current is { } step)
        {
            Show(step);
            if (Ask() is { } end)
            {
                return end;
            }
        }

        return InterviewEnd.Done;
    }

    private void Show(Step step)
    {
        var question = step.Question;
        if (question.Topic != _topic && step.PartNumber <= 1)
        {
            _topic = question.Topic;
            lines.Line($"Topic: {_topic}.");
        }

        if (step.PartNumber <= 1)
        {
            lines.Line($"Question {engine.Position} of {engine.Total}. {question.Prompt}");
        }

        if (step.Part is { } part)
        {
            lines.Line($"Part {step.PartNumber} of {question.Parts.Length}. {part.Label}.");
        }

        for (int i = 0; i < question.Options.Length; i++)
        {
            lines.Line($"{i + 1}. {question.Options[i].Label}");
        }
    }

    /// <summary>One question until it is answered; not null when the interview ends here.</summary>
    private InterviewEnd? Ask()
    {
        string wanted = $"{engine.Position} of {engine.Total}. {engine.Wanted()}: ";
        while (true)
        {
            lines.Prompt(wanted);
            string? text = input.ReadLine();
            if (text is null || !echoesTyping)
            {
                lines.EndPrompt();
            }

            if (text is null)
            {
                return InterviewEnd.InputEnded;
            }

            switch (text.Trim().ToLowerInvariant())
            {
                case "help" or "?":
                    Help();
                    break;
                case "repeat":
                    Show(engine.Current!);
                    break;
                case "list":
                    List();
                    break;
                case "back":
                    lines.Line(engine.Back() ? "Going back." : "This is the first question.");
                    return null;
                case "unknown":
                    lines.Line(engine.Unknown().Text);
                    return null;
                case "finish":
                    engine.Finish();
                    return InterviewEnd.Done;
                case "quit":
                    return InterviewEnd.Quit;
                default:
                    var reply = engine.Submit(text);
                    lines.Line(reply.Accepted ? reply.Text : $"Error: {reply.Text}");
                    if (reply.Accepted)
                    {
                        return null;
                    }

                    wanted = $"{reply.Retry}: ";
                    continue;
            }

            wanted = $"{engine.Position} of {engine.Total}. {engine.Wanted()}: ";
        }
    }

    private void Help()
    {
        var question = engine.Current!.Question;
        lines.Line(question.Prompt);
        lines.Line($"How to find out: {question.Observe}");
        lines.Line($"Why it matters: {question.Why}");
        lines.Line(question.Kind switch
        {
            QuestionKind.Many => "Type the numbers with spaces between them, or none.",
            QuestionKind.Order => "Type the numbers, most important first. Put the word and between equals. Leave out what has no place.",
            QuestionKind.Number => "Type the number, with its unit if it is another one.",
            QuestionKind.Parts => "Type the degrees, or unknown to leave this part out.",
            _ => "Type the number of an answer or its name.",
        });
        lines.Line("Put observed, reported or measured after it to say how it was obtained.");
        lines.Line("Other words: back, repeat, list, unknown, finish, quit.");
        lines.Line("List reads the answers so far. Finish asks nothing more and gives the result. Quit ends without one.");
    }

    private void List()
    {
        int number = 0;
        foreach (var (question, answer) in engine.Given)
        {
            string how = answer.How is { } h ? $", {ToiletAid.Core.Person.Words.Of(h)}" : string.Empty;
            lines.Line($"{++number}. {question.Prompt} {AnswerWording.Of(question, answer.Value)}{how}.");
        }

        if (number == 0)
        {
            lines.Line("No answers yet.");
        }
    }
}
