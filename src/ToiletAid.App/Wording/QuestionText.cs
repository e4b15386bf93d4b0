using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Interview;

namespace ToiletAid.App.Wording;

/// <summary>Questions in words, the same for every front end.</summary>
public static class QuestionText
{
    /// <summary>What is asked now, a sentence or an option a line.</summary>
    /// <param name="engine">The interview, with something left to ask.</param>
    /// <param name="withTopic">True to say the topic first.</param>
    public static IEnumerable<string> Lines(InterviewEngine engine, bool withTopic)
    {
        var step = engine.Current!;
        var question = step.Question;
        if (step.PartNumber <= 1)
        {
            if (withTopic)
            {
                yield return $"Topic: {question.Topic}.";
            }

            yield return question.Prompt;
        }

        if (step.Part is { } part)
        {
            yield return $"Part {step.PartNumber} of {question.Parts.Length}. {part.Label}.";
        }

        for (int i = 0; i < question.Options.Length; i++)
        {
            yield return $"{i + 1}. {Listed(question, question.Options[i])}";
        }
    }

    /// <summary>What has to be typed, with the place in the interview: the line with the cursor.</summary>
    public static string Prompt(InterviewEngine engine) => $"{engine.Position} of {engine.Total}. {engine.Wanted()}:";

    /// <summary>An option as it stands in the list: nobody may miss a danger because its label had to be short.</summary>
    private static string Listed(Question question, Option option) => question.Safety ? option.Meaning ?? option.Label : option.Label;

    /// <summary>How to find the answer out, why it matters and how to give it.</summary>
    public static IEnumerable<string> Help(Question question) =>
    [
        question.Prompt,
        .. question.Options.Where(o => o.Meaning is not null && !question.Safety).Select(o => $"{o.Label}: {PlanText.Lower(o.Meaning!)}."),
        $"How to find out: {question.Observe}",
        $"Why it matters: {question.Why}",
        question.Kind switch
        {
            QuestionKind.Many => "Type the numbers with spaces between them, or none.",
            QuestionKind.Order => "Type the numbers, most important first. Put the word and between equals. Leave out what has no place.",
            QuestionKind.Number => "Type the number, with its unit if it is another one.",
            QuestionKind.Parts => "Type the degrees, or unknown to leave this part out.",
            _ => "Type the number of an answer or its name.",
        },
        $"Put observed, reported or measured after it to say how it was obtained.{(question.Kind == QuestionKind.Parts ? " That holds for all parts." : string.Empty)}",
    ];

    /// <summary>The answers so far, one a line, and the note.</summary>
    public static IEnumerable<string> Given(InterviewEngine engine)
    {
        int number = 0;
        foreach (var (question, answer) in engine.Given)
        {
            string how = answer.How is { } h ? $", {Core.Person.Words.Of(h)}" : string.Empty;
            yield return $"{++number}. {Spoken.Capital(question.Name)}: {AnswerWording.Of(question, answer.Value)}{how}.";
        }

        if (number == 0)
        {
            yield return "No answers yet.";
        }

        foreach (string line in engine.Note.Read())
        {
            yield return line;
        }
    }
}
