using CsCheck;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Tests.Statistics;

public sealed class AgreementTests
{
    /// <summary>Cohen 1968, Psychol Bull 70:213, table 1 as printed in the manual of the R package psych: 200 cases, kappa 0.492, weighted kappa 0.348.</summary>
    [Fact]
    public void Kappa_of_the_case_of_Cohen()
    {
        double[,] counts = { { 88, 14, 18 }, { 10, 40, 10 }, { 2, 6, 12 } };
        double[,] weights = { { 0, 1, 3 }, { 1, 0, 6 }, { 3, 6, 0 } };

        Assert.Equal(0.492, Agreement.WeightedKappa(counts, (i, j) => i == j ? 0 : 1)!.Value, 5e-4);
        Assert.Equal(0.348, Agreement.WeightedKappa(counts, (i, j) => weights[i, j])!.Value, 5e-4);
    }

    /// <summary>Fleiss and Cohen 1973: with squared weights and equal margins weighted kappa is the correlation of the grades.</summary>
    [Fact]
    public void Squared_kappa_with_equal_margins_is_the_correlation() =>
        Gen.Int[0, 9].Array[16].Where(c => c.Sum() > 0).Sample(cells =>
        {
            double[,] counts = new double[4, 4];
            for (int i = 0; i < 4; i++)
            {
                for (int j = 0; j < 4; j++)
                {
                    // Both a table and its mirror, so that the raters use the grades alike.
                    counts[i, j] = cells[(i * 4) + j] + cells[(j * 4) + i];
                }
            }

            double[] one = [.. Each(counts).SelectMany(c => Enumerable.Repeat((double)c.I, (int)c.Count))];
            double[] other = [.. Each(counts).SelectMany(c => Enumerable.Repeat((double)c.J, (int)c.Count))];
            if (one.Distinct().Count() > 1)
            {
                Assert.Equal(MathNet.Numerics.Statistics.Correlation.Pearson(one, other), Agreement.WeightedKappa(counts, Agreement.Squared)!.Value, 1e-9);
            }
        }, iter: 500);

    [Fact]
    public void Raters_who_give_one_grade_to_everything_have_no_kappa() =>
        Assert.Null(Agreement.WeightedKappa(new double[,] { { 5, 0 }, { 0, 0 } }, Agreement.Squared));

    /// <summary>Zar 2010, Biostatistical Analysis, example 20.5: lengths of wing, tail and bill of twelve birds (from memory). The sums of ranks are read in the manual
    /// of a statistics program that reworks the example; they leave no other ranks.</summary>
    [Fact]
    public void Concordance_of_the_case_of_Zar()
    {
        double[][] birds =
        [
            [10.4, 10.8, 11.1, 10.2, 10.3, 10.2, 10.7, 10.5, 10.8, 11.2, 10.6, 11.4],
            [7.4, 7.6, 7.9, 7.2, 7.4, 7.1, 7.4, 7.2, 7.8, 7.7, 7.8, 8.3],
            [17, 17, 20, 14.5, 15.5, 13, 19.5, 16, 21, 20, 18, 22],
        ];
        double[] sums = [.. Enumerable.Range(0, 12).Select(i => birds.Sum(b => Agreement.Ranks(b)[i]))];

        Assert.Equal([14.5, 21, 30.5, 6, 11, 3.5, 20, 11.5, 29, 28.5, 22.5, 36], sums);
        Assert.Equal(0.9241, Agreement.Concordance(birds)!.Value, 5e-5);
    }

    /// <summary>Kendall: the mean rank correlation of all pairs of raters is (mW - 1) / (m - 1) where nothing is tied.</summary>
    [Fact]
    public void Concordance_is_the_mean_rank_correlation() =>
        Gen.Select(Gen.Int[2, 6], Gen.Int[2, 8], Gen.Int[0, 1_000_000]).Sample((raters, things, seed) =>
        {
            double[][] ratings = [.. Enumerable.Range(0, raters).Select(r => Enumerable.Range(0, things).Select(i => (double)i).OrderBy(i => Mix(seed, r, (int)i)).ToArray())];
            double mean = Pairs(raters).Average(p => MathNet.Numerics.Statistics.Correlation.Spearman(ratings[p.One], ratings[p.Other]));

            Assert.Equal(mean, ((raters * Agreement.Concordance(ratings)!.Value) - 1) / (raters - 1), 1e-9);
        }, iter: 300);

    [Fact]
    public void Raters_who_agree_have_a_concordance_of_one_also_with_ties() =>
        Gen.Int[1, 4].Array[2, 9].Where(r => r.Distinct().Count() > 1).Sample(rating =>
            Assert.Equal(1, Agreement.Concordance([[.. rating.Select(r => (double)r)], [.. rating.Select(r => (double)r * 7)]])!.Value, 1e-12));

    [Fact]
    public void Nothing_told_apart_has_no_concordance() => Assert.Null(Agreement.Concordance([[1, 1, 1], [2, 2, 2]]));

    private static ulong Mix(int seed, int rater, int thing) => new Core.Randomness.RandomDraws((ulong)seed, (ulong)((rater * 100) + thing)).NextBits();

    private static IEnumerable<(int One, int Other)> Pairs(int raters) =>
        from one in Enumerable.Range(0, raters) from other in Enumerable.Range(one + 1, raters - one - 1) select (one, other);

    private static IEnumerable<(int I, int J, double Count)> Each(double[,] counts) =>
        from i in Enumerable.Range(0, 4) from j in Enumerable.Range(0, 4) select (i, j, counts[i, j]);
}
