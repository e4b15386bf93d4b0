using CsCheck;
using ToiletAid.Core.Teaching;

namespace ToiletAid.Core.Tests.Teaching;

public sealed class HitCountTests
{
    /// <summary>The trial of aspirin against heart attacks in Agresti, Categorical Data Analysis: 189 of 11,034 without, 104 of 11,037 with; Pearson's chi-squared is 25.0 (from memory),
    /// and it is the square of the pooled test.</summary>
    [Fact]
    public void Standard_errors_are_those_of_the_pooled_test_of_two_proportions()
    {
        var count = new HitCount(11_034, 189, 11_037, 104);

        Assert.Equal(25.0, count.StandardErrors * count.StandardErrors, 0.05);
        Assert.Equal(0.0077, count.Lift, 0.00005);
    }

    [Fact]
    public void Nobody_or_no_difference_is_no_error() =>
        Assert.All([new HitCount(0, 0, 5, 2), new(5, 2, 0, 0), new(4, 0, 6, 0), new(4, 4, 6, 6)], c => Assert.Equal(0, c.StandardErrors));

    [Fact]
    public void Swapping_the_two_groups_turns_the_sign() =>
        Gen.Select(Gen.Int[1, 400], Gen.Int[1, 400], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b, p, q) =>
        {
            var count = new HitCount(a, (int)(p * a), b, (int)(q * b));
            var other = new HitCount(b, (int)(q * b), a, (int)(p * a));
            Assert.Equal(count.StandardErrors, -other.StandardErrors, 1e-9);
            Assert.Equal(Math.Sign(count.Lift), Math.Sign(count.StandardErrors));
        });
}
