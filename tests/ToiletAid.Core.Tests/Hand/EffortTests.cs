using CsCheck;
using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Tests.Hand;

public sealed class EffortTests
{
    private static readonly HandCoefficients Numbers = HandData.Model.Coefficients;

    /// <summary>Frey Law and Avin 2010, Ergonomics 53:109-129, table 2: grip, whole seconds at these shares of the greatest force.</summary>
    [Theory]
    [InlineData(0.2, 448)]
    [InlineData(0.3, 233)]
    [InlineData(0.5, 102)]
    [InlineData(0.8, 48)]
    [InlineData(1.0, 34)]
    public void Grip_is_held_as_long_as_the_published_law_says(double effort, double seconds)
    {
        Assert.Equal(seconds, Numbers.Endurance.Seconds(effort), 0.5);
        Assert.Equal(effort, Numbers.Endurance.Effort(Numbers.Endurance.Seconds(effort)), 1e-12);
    }

    /// <summary>The same table: elbow, shoulder and trunk, coefficients and times typed in again.</summary>
    [Theory]
    [InlineData(17.98, -2.21, 630, 257, 83, 29)]
    [InlineData(14.86, -1.83, 283, 135, 53, 22)]
    [InlineData(22.69, -2.27, 876, 349, 109, 38)]
    public void The_law_is_in_seconds_for_other_joints_too(double b0, double b1, double at20, double at30, double at50, double at80)
    {
        var law = new EnduranceLaw(b0, b1);
        Assert.Equal(at20, law.Seconds(0.2), 0.6);
        Assert.Equal(at30, law.Seconds(0.3), 0.6);
        Assert.Equal(at50, law.Seconds(0.5), 0.6);
        Assert.Equal(at80, law.Seconds(0.8), 0.6);
    }

    /// <summary>The example of a manual of the formula (Potvin 2012), read in a secondary copy: 0.596 of strength at a duty cycle of 0.0231, both rounded.</summary>
    [Fact]
    public void Acceptable_effort_is_that_of_a_worked_example() =>
        Assert.InRange(0.596, AcceptableEffort.OfDutyCycle(0.02315, 0.24, 28800) - 0.0005, AcceptableEffort.OfDutyCycle(0.02305, 0.24, 28800) + 0.0005);

    /// <summary>Potvin 2012, Human Factors 54:175-188, formula from memory; its values by duty cycle.</summary>
    [Theory]
    [InlineData(0.01, 0.669)]
    [InlineData(0.05, 0.513)]
    [InlineData(0.10, 0.425)]
    [InlineData(0.25, 0.283)]
    [InlineData(0.50, 0.153)]
    [InlineData(0.75, 0.067)]
    [InlineData(1.00, 0.000)]
    public void Acceptable_effort_falls_with_the_duty_cycle_as_recalled(double dutyCycle, double effort) =>
        Assert.Equal(effort, AcceptableEffort.OfDutyCycle(dutyCycle, 0.24, 28800), 0.0006);

    /// <summary>Heinzl 2025, Sci Rep 15:1250: 15 % of the greatest grip force was held 456 s. No more may be asked for that long.</summary>
    [Fact]
    public void No_more_is_asked_for_than_young_men_could_hold() => Assert.True(AcceptableEffort.Share(456, 1, Numbers) < 0.15);

    [Fact]
    public void Short_holds_are_limited_by_peak_force_and_repetition_alone()
    {
        // One second a day is the whole of what the relation leaves free.
        Assert.Equal(1, AcceptableEffort.Share(1, 1, Numbers));

        // 25 s twice a day: duty cycle 50 / 28800; worked by hand from the relation.
        Assert.Equal(1 - Math.Pow(49.0 / 28800, 0.24), AcceptableEffort.Share(25, 2, Numbers), 1e-12);
    }

    [Fact]
    public void Longer_or_more_often_never_allows_more_force() =>
        Gen.Select(Gen.Double[0, 900], Gen.Double[0, 900], Gen.Double[0.2, 10], Gen.Double[0.2, 10]).Sample(
            (a, b, often, oftener) =>
            {
                double more = AcceptableEffort.Share(Math.Min(a, b), Math.Min(often, oftener), Numbers);
                double less = AcceptableEffort.Share(Math.Max(a, b), Math.Max(often, oftener), Numbers);
                Assert.InRange(less, 0, more);
                Assert.True(more <= 1);
            },
            iter: 2_000);

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void No_time_is_given_for_an_effort_that_is_none(double effort) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Numbers.Endurance.Seconds(effort));
}
