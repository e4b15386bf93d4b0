using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>Answers that changed together, and their share of the change of a lead.</summary>
/// <param name="Questions">Ids of the questions, one unless they were taken together.</param>
/// <param name="Topic">Topic of the questions when they were taken together, else null.</param>
/// <param name="Share">Their share.</param>
/// <param name="IsTrials">True for what was tried between the visits, in place of questions.</param>
public sealed record Mover(ImmutableArray<QuestionId> Questions, string? Topic, double Share, bool IsTrials = false)
{
    /// <summary>The answers with these ones as they were at the later visit.</summary>
    internal Answers In(Answers answers, Answers later) => Questions.Aggregate(
        IsTrials ? answers.With(later.Trials) : answers,
        (all, question) => later[question] is { } answer ? all.With(question, answer) : all.Without(question));
}
