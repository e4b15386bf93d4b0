using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Tests.Statistics;

public sealed class ShiftTests
{
    private static readonly SpreadPrior Prior = new(0.5, [(0.6, 1)]);

    /// <summary>Efron and Morris 1975, J Am Stat Assoc 70:311 (the same case in Sci Am 1977, 236:119): hits of 18 batters in their first 45 turns, grand mean 0.265, shrinkage factor 0.212;
    /// 0.400 becomes 0.294 and 0.156 becomes 0.242.</summary>
    [Fact]
    public void Batters_are_shrunk_as_in_the_case_of_Efron_and_Morris()
    {
        double[] averages = [.400, .378, .356, .333, .311, .311, .289, .267, .244, .244, .222, .222, .222, .222, .222, .200, .178, .156];
        const double Within = 0.265 * 0.735 / 45, Kept = 0.212;
        double between = Math.Sqrt(Within * Kept / (1 - Kept));

        var shifts = MeanShifts.Fit([.. averages.Select(a => (a, 1 / Within))], new(1_000, [(between, 1)]));

        Assert.Equal(0.265, shifts.Common.Mean, 5e-4);
        Assert.All(averages.Zip(shifts.Groups), p => Assert.Equal(0.265 + (Kept * (p.First - 0.265)), p.Second.Mean, 5e-4));
        Assert.Equal(0.294, shifts.Groups[0].Mean, 5e-4);
        Assert.Equal(0.242, shifts.Groups[^1].Mean, 5e-4);
    }

    [Fact]
    public void Means_are_those_of_the_joint_normal_distribution()
    {
        ImmutableArray<(double Mean, double Precision)> groups = [(0.3, 40), (-0.2, 5), (0.1, 200)];
        var shifts = MeanShifts.Fit(groups, Prior);

        // Unknowns: the common shift and the three own ones.
        var precision = Matrix<double>.Build.DenseOfDiagonalArray([1 / 0.25, 1 / 0.36, 1 / 0.36, 1 / 0.36]);
        var right = Vector<double>.Build.Dense(4);
        for (int g = 0; g < groups.Length; g++)
        {
            var row = Vector<double>.Build.Dense(4, i => i == 0 || i == g + 1 ? 1 : 0);
            precision += row.OuterProduct(row) * groups[g].Precision;
            right += row * groups[g].Precision * groups[g].Mean;
        }

        var covariance = precision.Inverse();
        var mean = covariance * right;
        for (int g = 0; g < groups.Length; g++)
        {
            var row = Vector<double>.Build.Dense(4, i => i == 0 || i == g + 1 ? 1 : 0);
            Assert.Equal(row * mean, shifts.Groups[g].Mean, 1e-10);
            Assert.Equal(row * covariance * row, shifts.Groups[g].Variance, 1e-10);
        }

        Assert.Equal(covariance[0, 0] + 0.36, shifts.Unseen.Variance, 1e-10);
    }

    /// <summary>One group: the posterior is one integral, done here by brute force over a fine grid.</summary>
    [Theory]
    [InlineData(20, 9)]
    [InlineData(60, 30)]
    [InlineData(200, 20)]
    public void Failures_of_one_group_are_those_of_the_integral(long count, long failed)
    {
        double logOdds = Math.Log(0.2 / 0.8), variance = 0.25 + 0.36;
        var fitted = FailureShifts.Fit([[new(logOdds, count, failed)]], Prior).Groups[0];

        double mass = 0, first = 0, second = 0;
        for (int i = -4000; i <= 4000; i++)
        {
            double shift = i / 1000.0, odds = logOdds + shift;
            double p = Math.Exp((failed * odds) - (count * Math.Log(1 + Math.Exp(odds))) - (0.5 * shift * shift / variance) + (count * 0.5));
            (mass, first, second) = (mass + p, first + (p * shift), second + (p * shift * shift));
        }

        double mean = first / mass;
        Assert.Equal(mean, fitted.Mean, 0.05);
        Assert.Equal(Math.Sqrt((second / mass) - (mean * mean)), Math.Sqrt(fitted.Variance), 0.02);
    }

    [Fact]
    public void Three_tries_change_little_and_three_hundred_much()
    {
        double few = Shift(3), many = Shift(300);

        // Twice as often as the predicted fifth: log odds up by 0.98.
        Assert.InRange(few, 0.05, 0.45);
        Assert.InRange(many, 0.8, 1.0);

        static double Shift(int tries) => FailureShifts.Fit([[new(Math.Log(0.2 / 0.8), tries, (long)Math.Round(tries * 0.4))], [new(Math.Log(0.2 / 0.8), 40, 8)]], Prior).Groups[0].Mean;
    }

    [Fact]
    public void Nothing_tried_leaves_the_prior()
    {
        var shifts = FailureShifts.Fit([[]], Prior);

        Assert.Equal(0, shifts.Groups[0].Mean, 1e-12);
        Assert.Equal(0.25 + 0.36, shifts.Groups[0].Variance, 1e-12);
        Assert.Equal(0.25, shifts.Common.Variance, 1e-12);
        Assert.Equal(0, MeanShifts.Fit([], Prior).Unseen.Mean);
    }

    [Fact]
    public void Groups_that_all_fail_more_tell_of_one_that_was_not_tried()
    {
        var shifts = FailureShifts.Fit([[new(-1.4, 50, 25)], [new(-1.4, 50, 24)], [new(-1.4, 50, 26)], []], Prior);

        Assert.InRange(shifts.Groups[3].Mean, 0.4, 1.2);
        Assert.Equal(shifts.Common.Mean, shifts.Groups[3].Mean, 1e-9);
        Assert.Equal(shifts.Unseen.Variance, shifts.Groups[3].Variance, 1e-9);
    }

    [Fact]
    public void Of_several_spreads_the_one_that_fits_counts_most()
    {
        // Groups that all lie alike: the narrow spread is believed, so a new group is too.
        var alike = FailureShifts.Fit([.. Enumerable.Range(0, 12).Select(_ => ImmutableArray.Create(new Tries(-1.4, 200, 40)))], new(0.5, [(0.05, 0.5), (1.5, 0.5)]));
        var apart = FailureShifts.Fit([.. Enumerable.Range(0, 12).Select(g => ImmutableArray.Create(new Tries(-1.4, 200, g % 2 == 0 ? 10 : 120)))], new(0.5, [(0.05, 0.5), (1.5, 0.5)]));

        Assert.True(alike.Unseen.Variance < 0.1, $"{alike.Unseen.Variance}");
        Assert.True(apart.Unseen.Variance > 1, $"{apart.Unseen.Variance}");
    }

    [Fact]
    public void A_percentile_interval_of_a_mean_is_that_of_its_standard_error()
    {
        var random = new RandomDraws(7, 7);
        double[] units = new double[400];
        for (int i = 0; i < units.Length; i++)
        {
            units[i] = random.NextNormal();
        }

        var interval = Resampling.Percentiles(units.Length, drawn => drawn.Average(i => units[i]), 0.95, 4_000, 1)!.Value;

        Assert.Equal(1.96 / 20, (interval.High - interval.Low) / 2, 0.01);
        Assert.True(interval.Holds(units.Average()));
    }
}
