using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class DominanceTests
{
    /// <summary>By hand after Kirkwood and Sarin (1985), Operations Research 33:38 (from memory): with a complete order, one beats the
    /// other when the sums of the differences over the first places are never negative: here 0.2, then 0.1, then 0.1.</summary>
    [Fact]
    public void Sums_over_the_first_places_decide()
    {
        double[] one = [0.7, 0.4, 0.5], other = [0.5, 0.5, 0.5];
        WeightSet ordered = new(PriorityOrder.Strict(0, 1, 2));
        Assert.True(Dominance.Beats(ordered, one, other));
        Assert.False(Dominance.Beats(ordered, other, one));
        Assert.Equal(0.1 / 3, Dominance.LeastLead(ordered, one, other), 1e-12);
        Assert.Equal(0.2, Dominance.GreatestLead(ordered, one, other), 1e-12);
        Assert.False(Dominance.Beats(new(PriorityOrder.None(3)), one, other));
        Assert.False(Dominance.Beats(new(PriorityOrder.Strict(1, 0, 2)), one, other));
    }

    [Fact]
    public void Equal_alternatives_do_not_beat_each_other() =>
        Assert.False(Dominance.Beats(new(PriorityOrder.None(2)), [0.3, 0.6], [0.3, 0.6]));

    [Fact]
    public void Better_on_one_criterion_and_equal_elsewhere_is_enough() =>
        Assert.True(Dominance.Beats(new(PriorityOrder.None(2)), [0.3, 0.7], [0.3, 0.6]));

    [Fact]
    public void What_beats_whatever_the_weights_is_never_behind_in_a_sample_and_has_the_whole_volume() =>
        Gen.Select(RankingGen.Case(2, 5).Where(given => given.Values.Alternatives == 2), Gen.ULong).Sample((given, seed) =>
        {
            var (order, values) = given;
            WeightSet set = new(order);
            double[] one = Row(values, 0), other = Row(values, 1);
            double least = Dominance.LeastLead(set, one, other), greatest = Dominance.GreatestLead(set, one, other);
            var weights = WeightSample.Draw(order, 100, seed);
            for (int draw = 0; draw < weights.Count; draw++)
            {
                double lead = weights[draw].ToArray().Zip(one.Zip(other, (a, b) => a - b), (w, d) => w * d).Sum();
                Assert.InRange(lead, least - 1e-12, greatest + 1e-12);
            }

            var exact = ExactAcceptability.Of(values, set)!;
            if (Dominance.Beats(set, one, other))
            {
                // A lead that is nothing but rounding, as between values that add up to the same, can count as a tie in the exact cutting.
                Assert.InRange(exact.RankShare(0, 0), (greatest > 1e-12 ? 1 : 0.5) - 1e-9, 1 + 1e-9);
            }
            else if (least < -1e-3)
            {
                // A corner that is cut off by less has a volume below what the exact cutting keeps.
                Assert.True(exact.RankShare(1, 0) > 0);
            }
        });

    [Fact]
    public void With_intervals_it_holds_for_all_values_in_them() =>
        Gen.Select(RankingGen.Case(4, 4).Where(given => given.Values.Alternatives == 4), Gen.Double.Unit.Array[8]).Sample((given, where) =>
        {
            // Rows 0 and 1 bound the one, rows 2 and 3 the other.
            var (order, values) = given;
            WeightSet set = new(order);
            double[][] rows = [.. Enumerable.Range(0, 4).Select(i => Row(values, i))];
            double[] Low(int i) => [.. rows[i].Zip(rows[i + 1], Math.Min)];
            double[] High(int i) => [.. rows[i].Zip(rows[i + 1], Math.Max)];
            double[] Inside(int i, int from) => [.. Low(i).Zip(High(i), (low, high) => (low, high)).Select(
                (ends, c) => ends.low + (where[from + c] * (ends.high - ends.low)))];
            double least = Dominance.LeastLead(set, Low(0), High(2)), greatest = Dominance.GreatestLead(set, High(0), Low(2));
            Assert.True(Dominance.LeastLead(set, Inside(0, 0), Inside(2, 4)) >= least - 1e-12);
            Assert.True(Dominance.GreatestLead(set, Inside(0, 0), Inside(2, 4)) <= greatest + 1e-12);
        });

    [Fact]
    public void Lists_of_different_length_are_refused() =>
        Assert.Throws<ArgumentException>(() => Dominance.Beats(new(PriorityOrder.None(2)), [1, 2], [1]));

    private static double[] Row(CriterionValues values, int alternative) =>
        [.. Enumerable.Range(0, values.Criteria).Select(criterion => values[0, alternative, criterion])];
}
