using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Explaining;

/// <summary>One answer changed into another.</summary>
/// <param name="Question">The question.</param>
/// <param name="From">The answer as given; null when there is none.</param>
/// <param name="To">The answer that it is changed into.</param>
/// <param name="Size">How large the change is: 1 for the next option, more for one further away.</param>
public sealed record AnswerChange(Question Question, AnswerValue? From, AnswerValue To, int Size)
{
    /// <summary>The answers with this change made.</summary>
    public Answers In(Answers answers) => answers.With(Question.Id, new(To, answers[Question.Id]?.How ?? Question.Usually));
}
