using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Advising;

/// <summary>How far the predicted values of a plan spread over the persons that the answers allow, and what they are on average.</summary>
internal static class PlanSpread
{
    /// <summary>Variance on each criterion, in their order, over the same persons as those of the ranking.</summary>
    internal static double[] Of(KnowledgeBase knowledge, Appraiser appraiser, Plan plan, ulong seed, int draws)
    {
        double[] sums = new double[Criteria.Count], squares = new double[Criteria.Count];
        foreach (double[] values in Drawn(knowledge, appraiser, plan, seed, draws, null, tried: false))
        {
            for (int c = 0; c < Criteria.Count; c++)
            {
                sums[c] += values[c];
                squares[c] += values[c] * values[c];
            }
        }

        return [.. sums.Zip(squares, (sum, square) => Math.Max(0, (square / draws) - (sum / draws * (sum / draws))))];
    }

    /// <summary>What is expected of a plan over the same people as those of the ranking, with what was seen of it and its kin before.</summary>
    internal static TrialPrediction Expected(KnowledgeBase knowledge, Appraiser appraiser, Plan plan, ulong seed, int draws, Answers[]? people)
    {
        double[] sums = new double[Criteria.Count];
        foreach (double[] values in Drawn(knowledge, appraiser, plan, seed, draws, people, tried: true))
        {
            for (int c = 0; c < Criteria.Count; c++)
            {
                sums[c] += values[c];
            }
        }

        return TrialPrediction.Of(sums.Select(s => s / draws));
    }

    private static IEnumerable<double[]> Drawn(KnowledgeBase knowledge, Appraiser appraiser, Plan plan, ulong seed, int draws, Answers[]? people, bool tried)
    {
        // Where the person no longer takes the posture of the trial, it is seen in one that they take: its spread matters, and not its reach.
        var postures = PlanSpace.Postures(appraiser.Known);
        plan = postures.Contains(plan.Posture) ? plan : plan with { Posture = postures[0] };
        var strength = new RandomDraws(seed, PlanRanking.StrengthStream);
        var drawn = people is null ? Assumptions.Drawing(knowledge.Questions, appraiser.Known, seed) : draw => people[draw];
        for (int draw = 0; draw < draws; draw++)
        {
            double[] values = new double[Criteria.Count];
            var person = appraiser.DrawPerson(drawn(draw), strength.NextUniform(), draw);
            if (tried)
            {
                appraiser.Values(plan, person, values);
            }
            else
            {
                appraiser.Predicted(plan, person, values);
            }

            yield return values;
        }
    }
}
