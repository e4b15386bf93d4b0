using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

public sealed class LeadContributionsTests
{
    [Fact]
    public void A_small_case_by_hand()
    {
        // Centroid of two criteria in order: 3/4 and 1/4. Means over two draws: (0.5, 0.2) against (0.3, 0.6).
        var values = CriterionValues.Of(2, 2, 2, [0.4, 0.2, 0.3, 0.5, 0.6, 0.2, 0.3, 0.7]);
        var lead = LeadContributions.Of(values, new(PriorityOrder.Strict(0, 1)), 0, 1);
        Assert.Equal(0.15, lead.ByCriterion[0], 1e-12);
        Assert.Equal(-0.1, lead.ByCriterion[1], 1e-12);
        Assert.Equal(0.05, lead.Lead, 1e-12);
    }

    [Fact]
    public void Contributions_add_up_to_the_last_bit_and_agree_with_the_expected_values() =>
        RankingGen.Case(5, 6).Sample((order, values) =>
        {
            WeightSet set = new(order);
            double[] expected = ExpectedValues.Of(values, set);
            for (int other = 0; other < values.Alternatives; other++)
            {
                var lead = LeadContributions.Of(values, set, 0, other);
                double sum = 0;
                foreach (double part in lead.ByCriterion)
                {
                    sum += part;
                }

                Assert.Equal(lead.Lead, sum);
                Assert.Equal(expected[0] - expected[other], lead.Lead, 1e-12);
                var back = LeadContributions.Of(values, set, other, 0);
                Assert.Equal(lead.ByCriterion, back.ByCriterion.Select(part => -part));
            }
        });

    [Fact]
    public void Alternatives_that_do_not_exist_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LeadContributions.Of(new CriterionValues(2, 2), new(PriorityOrder.None(2)), 0, 2));
}
