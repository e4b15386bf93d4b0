using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Advising;

/// <summary>The order of the criteria: the person's, or the project's usual one where none is stated.</summary>
public static class Priorities
{
    /// <summary>Where no order is stated: that it can be done alone, cleans and does no harm comes before what is touched and remembered, and that before burden and cost (decision).</summary>
    private static readonly ImmutableArray<ImmutableArray<Criterion>> Usual =
    [
        [Criterion.Skin, Criterion.Reach, Criterion.Handling, Criterion.Cleaning, Criterion.Independence],
        [Criterion.Contact, Criterion.Learning],
        [Criterion.Carrying, Criterion.Upkeep],
    ];

    /// <summary>The order for these answers, and whether the person stated it. Within a group of the usual order nothing is said about which comes first.</summary>
    public static (PriorityOrder Order, bool Stated) Of(Answers answers)
    {
        if (answers[QuestionIds.Priorities]?.Value is AnswerValue.Order { Groups.IsEmpty: false } stated)
        {
            var groups = stated.Groups.Select(g => g.Select(c => Words.Find<Criterion>(c)!.Value).ToArray()).ToArray();
            bool placed = groups.Any(g => g.Contains(Criterion.Independence));
            return (PriorityOrder.Of(Criteria.Count, groups.Select(g => Array.ConvertAll(WithIndependence(g, placed), c => (int)c))), true);
        }

        return (PriorityOrder.Of(Criteria.Count, Usual.Select(g => g.Select(c => (int)c).ToArray()), TieMeaning.EitherFirst), false);
    }

    /// <summary>Who says that the hand's steps matter means doing them alone: independence that was given no place of its own stands with
    /// handling, of which it was a part in orders of before.</summary>
    private static Criterion[] WithIndependence(Criterion[] group, bool placed) =>
        placed || !group.Contains(Criterion.Handling) ? group : [.. group, Criterion.Independence];
}
