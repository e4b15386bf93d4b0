using System.Collections.Immutable;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>What was measured of one thing at several visits.</summary>
/// <param name="Question">The question.</param>
/// <param name="Part">The part, or null for a question without parts.</param>
/// <param name="Points">The measurements, oldest first; three or more.</param>
/// <param name="FirstToLast">The last against the first; null when these two are equal.</param>
/// <param name="Band">A value that lies closer than this to the first differs from it by less than is surely real, SI; null where no limit is known.</param>
public sealed record Trend(Question Question, Part? Part, ImmutableArray<TrendPoint> Points, AnswerDifference? FirstToLast, double? Band)
{
    /// <summary>Fewest visits that make a trend.</summary>
    public const int Fewest = 3;

    /// <summary>Everything measured at three or more of the visits, if it was not always the same.</summary>
    /// <param name="knowledge">Questions and limits of change.</param>
    /// <param name="visits">Visits, oldest first.</param>
    /// <param name="sameRater">True when the same person measured always, false when not, null when that is not known.</param>
    public static ImmutableArray<Trend> Of(KnowledgeBase knowledge, ImmutableArray<Visit> visits, bool? sameRater)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        var things = knowledge.Questions.All.SelectMany(q => q.Kind == QuestionKind.Parts ? q.Parts.Select(p => (Question: q, Part: (Part?)p)) : [(q, null)])
            .Where(t => t.Part is not null || knowledge.Changes.Any(c => c.Question == t.Question.Id));
        return [.. things.Select(t => Of(knowledge, visits, t.Question, t.Part, sameRater)).OfType<Trend>()];
    }

    private static Trend? Of(KnowledgeBase knowledge, ImmutableArray<Visit> visits, Question question, Part? part, bool? sameRater)
    {
        ImmutableArray<TrendPoint> points = [.. visits.Select(v => Point(v, question.Id, part?.Id)).OfType<TrendPoint>()];
        return points.Length < Fewest || points.All(p => SameAnswer.Near(p.Si, points[0].Si)) ? null
            : new(
                question,
                part,
                points,
                AnswerDifferences.Of(knowledge, Only(question.Id, points[0]), Only(question.Id, points[^1]), sameRater).FirstOrDefault(d => d.Part == part),
                knowledge.Changes.FirstOrDefault(c => c.Question == question.Id && c.Part == part?.Id)?.Limits(points[0].Si, sameRater).Sure);
    }

    private static Answers Only(QuestionId question, TrendPoint point) => Answers.None.With(question, point.Answer);

    private static TrendPoint? Point(Visit visit, QuestionId question, string? part) => visit.Answers[question] switch
    {
        { Value: AnswerValue.Number n, How: HowObtained.Measured } answer => new(visit, answer, n.Amount, n.Unit),
        { Value: AnswerValue.Parts p, How: HowObtained.Measured } answer when part is not null && p.Amounts.TryGetValue(part, out double amount) => new(visit, answer, amount, p.Unit),
        _ => null,
    };
}
