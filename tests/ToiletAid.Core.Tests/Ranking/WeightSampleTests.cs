using CsCheck;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

/// <summary>Sampled weights against weights that are drawn from everything and thrown away when they break the order.</summary>
public sealed class WeightSampleTests
{
    private const int Draws = 20_000;

    /// <summary>Kolmogorov and Smirnov's two-sample limit for a false alarm in 1,000 (factor 1.95 from memory).</summary>
    private static readonly double Limit = 1.95 * Math.Sqrt(2.0 / Draws);

    public static TheoryData<string, PriorityOrder> Orders => new()
    {
        { "nothing said", PriorityOrder.None(4) },
        { "complete", PriorityOrder.Strict(2, 0, 3, 1) },
        { "one mentioned", PriorityOrder.Of(4, [[1]]) },
        { "two mentioned", PriorityOrder.Of(5, [[4], [0]]) },
        { "equal weights first", PriorityOrder.Of(4, [[1, 2], [0], [3]]) },
        { "equal weights between", PriorityOrder.Of(5, [[0], [1, 2], [3]]) },
        { "equal weights, rest open", PriorityOrder.Of(5, [[3, 1]]) },
        { "either first", PriorityOrder.Of(4, [[1, 2], [0], [3]], TieMeaning.EitherFirst) },
        { "two open ranges", PriorityOrder.Of(5, [[0, 3], [1]], TieMeaning.EitherFirst) },
    };

    [Theory]
    [MemberData(nameof(Orders))]
    public void Weights_are_spread_evenly_over_what_the_order_allows(string what, PriorityOrder order)
    {
        double[][] drawn = Sampled(order), kept = Rejected(order, seed: 77);
        Assert.True(LargestGap(drawn, kept) < Limit, what);
    }

    [Fact]
    public void The_comparison_notices_a_sampler_that_mixes_all_corners_at_once()
    {
        // With an open range the set has more corners than a simplex; mixing all of them crowds the middle.
        var order = PriorityOrder.Of(4, [[1]]);
        double[][] corners = [.. new WeightSet(order).ExtremePoints()];
        RandomDraws random = new(5, 5);
        double[][] wrong = new double[Draws][];
        for (int draw = 0; draw < Draws; draw++)
        {
            double[] mix = Simplex(ref random, corners.Length);
            wrong[draw] = [.. Enumerable.Range(0, 4).Select(c => corners.Select((corner, i) => mix[i] * corner[c]).Sum())];
        }

        Assert.True(LargestGap(wrong, Rejected(order, seed: 77)) > 2 * Limit);
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void The_mean_of_the_sample_is_the_exact_centroid(string what, PriorityOrder order)
    {
        var sample = WeightSample.Draw(order, 200_000, seed: 3);
        for (int criterion = 0; criterion < order.Criteria; criterion++)
        {
            double sum = 0;
            for (int draw = 0; draw < sample.Count; draw++)
            {
                sum += sample[draw][criterion];
            }

            // Standard deviation of a weight is below 0.25 here, so this is at least 3.5 standard errors.
            Assert.True(Math.Abs((sum / sample.Count) - sample.Set.Centroid[criterion]) < 0.002, $"{what}, criterion {criterion}");
        }
    }

    [Fact]
    public void The_mean_of_sorted_even_weights_is_the_rank_order_centroid()
    {
        RandomDraws random = new(6, 6);
        double[] sums = new double[8], centroid = RankOrderCentroid.Weights(8);
        for (int draw = 0; draw < 100_000; draw++)
        {
            double[] weights = Simplex(ref random, 8);
            Array.Sort(weights, (a, b) => b.CompareTo(a));
            for (int place = 0; place < 8; place++)
            {
                sums[place] += weights[place] / 100_000;
            }
        }

        for (int place = 0; place < 8; place++)
        {
            Assert.Equal(centroid[place], sums[place], 0.0015);
        }
    }

    [Fact]
    public void Every_sampled_weight_vector_keeps_the_order() =>
        Gen.Select(RankingGen.Order(1, 8), Gen.ULong).Sample((order, seed) =>
        {
            var sample = WeightSample.Draw(order, 20, seed);
            for (int draw = 0; draw < sample.Count; draw++)
            {
                WeightSetTests.AssertAllowed(order, sample[draw]);
            }
        });

    // By the definition: what is put in other places must be what would have been drawn.
    [Fact]
    public void A_sample_for_another_order_of_the_same_shape_is_the_one_that_would_be_drawn() =>
        Gen.Select(RankingGen.Order(1, 8), Gen.Int[0, 7], Gen.ULong).Sample((order, turn, seed) =>
        {
            var other = PriorityOrder.Of(order.Criteria, order.Places.Select(p => p.Select(c => (c + turn) % order.Criteria).ToArray()), order.Ties);
            WeightSample drawn = WeightSample.Draw(other, 20, seed), placed = WeightSample.Draw(order, 20, seed).For(other);
            for (int draw = 0; draw < drawn.Count; draw++)
            {
                Assert.Equal(drawn[draw].ToArray(), placed[draw].ToArray());
            }
        });

    [Fact]
    public void A_sample_of_another_shape_is_refused() =>
        Assert.Throws<ArgumentException>(() => WeightSample.Draw(PriorityOrder.Of(8, [[2], [0, 5]]), 20, seed: 9).For(PriorityOrder.Of(8, [[2, 0], [5]])));

    [Fact]
    public void A_longer_sample_begins_with_the_shorter_one()
    {
        var order = PriorityOrder.Of(8, [[2], [0, 5]]);
        WeightSample longer = WeightSample.Draw(order, 500, seed: 9), shorter = WeightSample.Draw(order, 120, seed: 9);
        for (int draw = 0; draw < shorter.Count; draw++)
        {
            Assert.Equal(shorter[draw].ToArray(), longer.First(120)[draw].ToArray());
        }

        Assert.Equal(120, longer.First(120).Count);
        Assert.NotEqual(shorter[0].ToArray(), WeightSample.Draw(order, 1, seed: 10)[0].ToArray());
        Assert.NotEqual(shorter[0].ToArray(), WeightSample.Draw(order, 1, seed: 9, stream: 1)[0].ToArray());
    }

    [Fact]
    public void Draws_out_of_range_are_refused()
    {
        var sample = WeightSample.Draw(PriorityOrder.None(2), 10, seed: 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightSample.Draw(PriorityOrder.None(2), 0, seed: 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => sample.First(11));
        Assert.Throws<ArgumentOutOfRangeException>(() => sample.First(5)[5].ToArray());
    }

    private static double[][] Sampled(PriorityOrder order)
    {
        var sample = WeightSample.Draw(order, Draws, seed: 42);
        return [.. Enumerable.Range(0, Draws).Select(draw => sample[draw].ToArray())];
    }

    /// <summary>Even weights of tied groups (size times weight is even on a simplex), kept when they agree with the order.</summary>
    private static double[][] Rejected(PriorityOrder order, ulong seed)
    {
        int[][] groups =
        [
            .. order.Places.SelectMany(place => order.Ties == TieMeaning.EqualWeights
                ? new[] { place.ToArray() }
                : [.. place.Select(criterion => new[] { criterion })]),
            .. order.Unmentioned.Select(criterion => new[] { criterion }),
        ];
        RandomDraws random = new(seed, 1);
        List<double[]> kept = [];
        while (kept.Count < Draws)
        {
            double[] totals = Simplex(ref random, groups.Length), weights = new double[order.Criteria];
            for (int group = 0; group < groups.Length; group++)
            {
                foreach (int criterion in groups[group])
                {
                    weights[criterion] = totals[group] / groups[group].Length;
                }
            }

            if (Agrees(order, weights))
            {
                kept.Add(weights);
            }
        }

        return [.. kept];
    }

    private static bool Agrees(PriorityOrder order, double[] weights)
    {
        int[][] places = [.. order.Places.Select(place => place.ToArray()), [.. order.Unmentioned]];
        return Enumerable.Range(0, places.Length - 1).All(
            i => places[i + 1].All(lesser => places[i].All(greater => weights[greater] >= weights[lesser])));
    }

    /// <summary>Gaps between sorted even numbers: another way to draw from a simplex than the one under test.</summary>
    private static double[] Simplex(ref RandomDraws random, int corners)
    {
        double[] cuts = new double[corners + 1];
        for (int i = 1; i < corners; i++)
        {
            cuts[i] = random.NextUniform();
        }

        cuts[corners] = 1;
        Array.Sort(cuts);
        return [.. Enumerable.Range(0, corners).Select(i => cuts[i + 1] - cuts[i])];
    }

    /// <summary>Largest difference of the cumulative shares over each weight, their squares added up, and the sum of neighbouring products.</summary>
    private static double LargestGap(double[][] one, double[][] other)
    {
        int criteria = one[0].Length;
        double gap = 0;
        for (int measure = 0; measure < criteria + 2; measure++)
        {
            double[] a = Measured(one, measure, criteria), b = Measured(other, measure, criteria);
            for (int i = 0, j = 0; i < a.Length && j < b.Length;)
            {
                _ = a[i] <= b[j] ? i++ : j++;
                gap = Math.Max(gap, Math.Abs(i - j) / (double)Draws);
            }
        }

        return gap;
    }

    private static double[] Measured(double[][] weights, int measure, int criteria)
    {
        double[] measured = [.. weights.Select(w =>
            measure < criteria ? w[measure]
            : measure == criteria ? w.Sum(x => x * x)
            : Enumerable.Range(1, criteria - 1).Sum(c => w[c] * w[c - 1]))];
        Array.Sort(measured);
        return measured;
    }
}
