namespace ToiletAid.Core.Ranking;

/// <summary>Rank acceptability without sampling, for small cases and values that are certain.</summary>
/// <remarks>The weight set is a union of equal simplexes. Wherever two alternatives change places inside a simplex, it is cut in two at the
/// point of an edge where they are equal; the parts have the volumes in which that point divides the edge. In the end the order
/// of the alternatives is the same all over each piece, and volumes and centres of the pieces are known.</remarks>
public static class ExactAcceptability
{
    /// <summary>Computes rank shares and central weights.</summary>
    /// <param name="values">Values of the alternatives.</param>
    /// <param name="weights">What the order allows.</param>
    /// <param name="draw">The value draw to use.</param>
    /// <param name="mostPieces">Pieces after which to give up, 1 or more.</param>
    /// <returns>Null when more pieces would be needed.</returns>
    /// <exception cref="ArgumentException">Values and weights have different numbers of criteria.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such draw.</exception>
    public static ExactShares? Of(CriterionValues values, WeightSet weights, int draw = 0, int mostPieces = 20_000)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(weights);
        values.RequireCriteria(weights.Criteria);
        Pieces pieces = new(Differences(values, draw), values.Alternatives, mostPieces);
        foreach (double[][] simplex in weights.Simplexes())
        {
            if (!pieces.Divide(simplex, volume: 1, pair: 0))
            {
                return null;
            }
        }

        return new(values.Alternatives, values.Criteria, pieces.RankVolumes, pieces.FirstMoments);
    }

    /// <summary>Value of the earlier alternative minus that of the later one, for every pair.</summary>
    private static List<Pair> Differences(CriterionValues values, int draw)
    {
        List<Pair> pairs = [];
        for (int i = 0; i < values.Alternatives; i++)
        {
            for (int j = i + 1; j < values.Alternatives; j++)
            {
                double[] differences = new double[values.Criteria];
                for (int criterion = 0; criterion < differences.Length; criterion++)
                {
                    differences[criterion] = values[draw, i, criterion] - values[draw, j, criterion];
                }

                pairs.Add(new(i, j, differences, 1e-12 * differences.Max(Math.Abs)));
            }
        }

        return pairs;
    }

    /// <summary>Two alternatives; a lead of no more than <paramref name="Nothing"/> either way is rounding.</summary>
    private sealed record Pair(int One, int Other, double[] Differences, double Nothing);

    private sealed class Pieces(List<Pair> pairs, int alternatives, int mostPieces)
    {
        private int _count;

        /// <summary>Volume by alternative and rank.</summary>
        public double[] RankVolumes { get; } = new double[alternatives * alternatives];

        /// <summary>Volume times centre of the pieces in which the alternative comes first.</summary>
        public Dictionary<int, double[]> FirstMoments { get; } = [];

        public bool Divide(double[][] simplex, double volume, int pair)
        {
            double[] leads = new double[simplex.Length];
            for (; pair < pairs.Count; pair++)
            {
                int best = 0, worst = 0;
                for (int corner = 0; corner < simplex.Length; corner++)
                {
                    leads[corner] = Lead(pairs[pair], simplex[corner]);
                    best = leads[corner] > leads[best] ? corner : best;
                    worst = leads[corner] < leads[worst] ? corner : worst;
                }

                if (leads[best] > 0 && leads[worst] < 0)
                {
                    double part = leads[best] / (leads[best] - leads[worst]);
                    double[] cut = Between(simplex[best], simplex[worst], part);
                    return Divide(With(simplex, worst, cut), volume * part, pair)
                        && Divide(With(simplex, best, cut), volume * (1 - part), pair);
                }
            }

            Add(simplex, volume);
            return ++_count <= mostPieces;
        }

        private void Add(double[][] simplex, double volume)
        {
            int[] above = new int[alternatives], tied = new int[alternatives];
            foreach (var pair in pairs)
            {
                double lead = simplex.Sum(corner => Lead(pair, corner));
                above[pair.Other] += lead > 0 ? 1 : 0;
                above[pair.One] += lead < 0 ? 1 : 0;
                tied[pair.One] += lead == 0 ? 1 : 0;
                tied[pair.Other] += lead == 0 ? 1 : 0;
            }

            for (int i = 0; i < alternatives; i++)
            {
                double part = volume / (tied[i] + 1);
                for (int rank = above[i]; rank <= above[i] + tied[i]; rank++)
                {
                    RankVolumes[(i * alternatives) + rank] += part;
                }

                if (above[i] == 0)
                {
                    AddMoment(i, simplex, part);
                }
            }
        }

        private void AddMoment(int alternative, double[][] simplex, double volume)
        {
            if (!FirstMoments.TryGetValue(alternative, out double[]? moment))
            {
                FirstMoments[alternative] = moment = new double[simplex[0].Length];
            }

            foreach (double[] corner in simplex)
            {
                for (int criterion = 0; criterion < moment.Length; criterion++)
                {
                    moment[criterion] += volume * corner[criterion] / simplex.Length;
                }
            }
        }

        private static double Lead(Pair pair, double[] corner)
        {
            double lead = ExpectedValues.WeightedSum(pair.Differences, corner);
            return Math.Abs(lead) <= pair.Nothing ? 0 : lead;
        }

        private static double[][] With(double[][] simplex, int corner, double[] replacement)
        {
            double[][] copy = (double[][])simplex.Clone();
            copy[corner] = replacement;
            return copy;
        }

        private static double[] Between(double[] from, double[] to, double part)
        {
            double[] point = new double[from.Length];
            for (int criterion = 0; criterion < point.Length; criterion++)
            {
                point[criterion] = from[criterion] + (part * (to[criterion] - from[criterion]));
            }

            return point;
        }
    }
}
