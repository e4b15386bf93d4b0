using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Interview;

/// <summary>Which questions are open, given what is known: the same for every front end.</summary>
public static class OpenQuestions
{
    /// <summary>The questions that belong to this depth and whose conditions hold, answered or not, in order. A condition on an answer that is not known holds.</summary>
    public static ImmutableArray<Question> Relevant(QuestionSet questions, Depth depth, Answers answers) =>
        [.. questions.All.Where(q => q.Depths.Contains(depth) && IsRelevant(q, answers))];

    /// <summary>The relevant questions that have no answer yet, in order.</summary>
    public static ImmutableArray<Question> Open(QuestionSet questions, Depth depth, Answers answers) =>
        [.. Relevant(questions, depth, answers).Where(q => answers[q.Id] is null)];

    /// <summary>True when every condition of the question holds.</summary>
    public static bool IsRelevant(Question question, Answers answers) => question.AskWhen.All(c => Holds(c, answers));

    private static bool Holds(Clause clause, Answers answers)
    {
        string? choice = answers.Choice(clause.Question);
        if (clause.Known is { } known)
        {
            return choice is not null ? known.Contains(choice) : answers.Many(clause.Question) is { } many && many.Any(known.Contains);
        }

        if (choice is null)
        {
            return true;
        }

        return (clause.Is is not { } yes || yes.Contains(choice)) && (clause.IsNot is not { } no || !no.Contains(choice));
    }
}
