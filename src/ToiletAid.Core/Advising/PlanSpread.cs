using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Advising;

/// <summary>How far the predicted values of a plan spread over the persons that the answers allow.</summary>
internal static class PlanSpread
{
    /// <summary>Variance on each criterion, in their order, over the same persons as those of the ranking.</summary>
    internal static double[] Of(KnowledgeBase knowledge, Appraiser appraiser, Plan plan, ulong seed, int draws)
    {
        // Where the person no longer takes the posture of the trial, it is seen in one that they take: its spread matters, and not its reach.
        var postures = PlanSpace.Postures(appraiser.Known);
        plan = postures.Contains(plan.Posture) ? plan : plan with { Posture = postures[0] };
        double[] sums = new double[Criteria.Count], squares = new double[Criteria.Count];
        var strength = new RandomDraws(seed, PlanRanking.StrengthStream);
        for (int draw = 0; draw < draws; draw++)
        {
            var filled = Assumptions.Draw(knowledge.Questions, appraiser.Known, seed, draw);
            double[] values = appraiser.Predicted(plan, appraiser.DrawPerson(filled, strength.NextUniform(), draw));
            for (int c = 0; c < Criteria.Count; c++)
            {
                sums[c] += values[c];
                squares[c] += values[c] * values[c];
            }
        }

        return [.. sums.Zip(squares, (sum, square) => Math.Max(0, (square / draws) - (sum / draws * (sum / draws))))];
    }
}
