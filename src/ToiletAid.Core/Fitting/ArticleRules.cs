using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Fitting;

/// <summary>What rules ask of an article though no place depends on it: that the water is not too hot, and that nothing gives way under the person.</summary>
/// <param name="knowledge">Limits.</param>
internal sealed class ArticleRules(KnowledgeBase knowledge)
{
    /// <summary>A line of a rule counts as failed by every other article, as what it has or has not does.</summary>
    private const double HalfOfThem = 0.5;

    /// <summary>The lines.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="plan">The plan.</param>
    internal IEnumerable<ArticleLine> Of(Answers known, Plan plan)
    {
        foreach (string? bearer in Bearers(plan))
        {
            var trait = new ArticleTrait(ArticleTraitKind.Carries, bearer);
            if (known.Si(QuestionIds.Mass) is not { } mass)
            {
                yield return new(trait, true) { Fails = HalfOfThem };
            }
            else if (Math.Ceiling(mass + knowledge.Evidence.Value(EvidenceIds.ErrorMass)) is var least && least > knowledge.Evidence[EvidenceIds.SeatUsualLimit].Low)
            {
                yield return new(trait, true) { Limit = least, Fails = HalfOfThem };
            }
        }

        // What heats its water keeps to a limit or not. What is filled is as warm as it is filled, which matters in a shop where a thermometer has to be bought.
        bool burnsSooner = HeatSense.BurnsSooner(known, knowledge.Evidence.Value(EvidenceIds.ScaldOld));
        if (plan.Aid.Water is { CanBeWarm: true } water && (water.LimitsTemperature || burnsSooner))
        {
            var kind = water.LimitsTemperature ? ArticleTraitKind.WaterTemperature : ArticleTraitKind.FillTemperature;
            yield return new(new(kind), true) { AtLeast = false, Limit = knowledge.Water.LimitCelsius(burnsSooner), Fails = HalfOfThem };
        }
    }

    /// <summary>What the person sits, leans or steps on: the article itself, then ids of add-ons.</summary>
    private static IEnumerable<string?> Bearers(Plan plan) =>
    [
        .. plan.Aid is { Reach: ReachKind.None } && ArticleTrait.IsArticle(plan.Aid) ? (string?[])[null] : [],
        .. plan.AddOns.Where(a => a.RoomGained is not null || a.Steadies).Select(a => a.Id),
    ];
}
