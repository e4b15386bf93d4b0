using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

/// <summary>The definitions written down without any thought of speed.</summary>
internal sealed record PlainAcceptability(double[,] Ranks, int[,] Wins, double[,] FirstWeights)
{
    public static PlainAcceptability Of(int alternatives, int valueDraws, double[] flat, WeightSample weights)
    {
        int criteria = weights.Criteria;
        double[,] ranks = new double[alternatives, alternatives], firstWeights = new double[alternatives, criteria];
        int[,] wins = new int[alternatives, alternatives];
        for (int draw = 0; draw < weights.Count; draw++)
        {
            double[] w = weights[draw].ToArray(), sums = new double[alternatives];
            for (int i = 0; i < alternatives; i++)
            {
                for (int criterion = 0; criterion < criteria; criterion++)
                {
                    sums[i] += w[criterion] * flat[(((draw % valueDraws * alternatives) + i) * criteria) + criterion];
                }
            }

            for (int i = 0; i < alternatives; i++)
            {
                int better = sums.Count(sum => sum > sums[i]), tied = sums.Count(sum => sum == sums[i]);
                for (int rank = better; rank < better + tied; rank++)
                {
                    ranks[i, rank] += 1.0 / tied / weights.Count;
                }

                for (int k = 0; k < alternatives; k++)
                {
                    wins[i, k] += sums[i] > sums[k] ? 1 : 0;
                }

                for (int criterion = 0; criterion < criteria && better == 0; criterion++)
                {
                    firstWeights[i, criterion] += w[criterion] / tied / weights.Count;
                }
            }
        }

        for (int i = 0; i < alternatives; i++)
        {
            for (int criterion = 0; criterion < criteria; criterion++)
            {
                firstWeights[i, criterion] /= ranks[i, 0];
            }
        }

        return new(ranks, wins, firstWeights);
    }
}
