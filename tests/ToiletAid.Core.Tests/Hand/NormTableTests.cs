using System.Text.Json;
using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Hand;

public sealed class NormTableTests
{
    private static readonly HandNorms Norms = BuiltInNorms.Hand();

    /// <summary>Tomkinson et al. 2025, J Sport Health Sci 14:101014, typed in again: kg at P5, P20, P50, P80, P95, in the middle of the band.</summary>
    [Theory]
    [InlineData(Sex.Male, 22.5, 33.9, 40.5, 48.0, 56.0, 63.6)]
    [InlineData(Sex.Male, 32.5, 35.0, 42.2, 49.7, 57.4, 64.9)]
    [InlineData(Sex.Male, 62.5, 25.5, 33.6, 42.4, 51.1, 59.3)]
    [InlineData(Sex.Male, 77.5, 20.0, 27.0, 35.1, 43.5, 51.1)]
    [InlineData(Sex.Male, 92.5, 13.7, 19.2, 26.3, 34.2, 41.2)]
    [InlineData(Sex.Female, 22.5, 19.7, 24.0, 28.6, 33.6, 39.1)]
    [InlineData(Sex.Female, 42.5, 18.3, 23.7, 29.4, 35.2, 40.8)]
    [InlineData(Sex.Female, 67.5, 14.3, 19.5, 25.0, 30.5, 35.8)]
    [InlineData(Sex.Female, 82.5, 10.7, 15.5, 20.4, 25.3, 30.2)]
    [InlineData(Sex.Female, 87.5, 9.3, 13.9, 18.6, 23.3, 28.0)]
    public void Grip_percentiles_are_those_of_the_published_table(Sex sex, double age, double p5, double p20, double p50, double p80, double p95)
    {
        var norm = Norms.Grip.For(age, sex);

        Assert.False(norm.IsOutsideTable);
        foreach (var (u, kilograms) in new[] { (0.05, p5), (0.2, p20), (0.5, p50), (0.8, p80), (0.95, p95) })
        {
            Assert.Equal(kilograms * HandData.NewtonsInKilogram, norm.Curve.At(u), 1e-6);
            Assert.Equal(u, norm.Curve.Percentile(kilograms * HandData.NewtonsInKilogram), 1e-9);
        }
    }

    /// <summary>Palmar pinch adapted from Mathiowetz et al. 1985, typed in again: mean and standard deviation in pounds.</summary>
    [Theory]
    [InlineData(Sex.Male, 25, 26.3, 4.8)]
    [InlineData(Sex.Male, 35, 25.5, 4.5)]
    [InlineData(Sex.Male, 45, 24.3, 3.8)]
    [InlineData(Sex.Male, 55, 23.8, 5.1)]
    [InlineData(Sex.Male, 65, 21.6, 3.2)]
    [InlineData(Sex.Female, 25, 17.5, 2.8)]
    [InlineData(Sex.Female, 35, 18.4, 4.7)]
    [InlineData(Sex.Female, 45, 17.5, 3.1)]
    [InlineData(Sex.Female, 55, 16.7, 3.2)]
    [InlineData(Sex.Female, 65, 14.5, 3.1)]
    public void Pinch_means_and_spreads_are_those_of_the_published_table(Sex sex, double age, double mean, double sd)
    {
        const double NewtonsInPound = 4.4482216152605;
        var curve = Norms.Pinch(age, sex).Curve;

        Assert.Equal(mean * NewtonsInPound, curve.Median, 1e-6);
        Assert.Equal(1, curve.ZScore((mean + sd) * NewtonsInPound), 1e-9);
        Assert.Equal(-1.5, curve.ZScore((mean - (1.5 * sd)) * NewtonsInPound), 1e-9);
    }

    /// <summary>The design example that comes with the pinch table: 9.4 lb, 42 N, for the weakest twentieth of women of 60 to 69.</summary>
    [Fact]
    public void Weakest_twentieth_of_older_women_pinch_with_42_newtons() =>
        Assert.Equal(42, Norms.Pinch(65, Sex.Female).Curve.At(0.05), 0.5);

    /// <summary>Oxford Grice et al. 2003, from memory: right hand, mean and standard deviation, s.</summary>
    [Theory]
    [InlineData(Sex.Male, 23.5, 16.41, 1.65)]
    [InlineData(Sex.Male, 53.5, 18.93, 2.37)]
    [InlineData(Sex.Male, 68.5, 21.23, 3.29)]
    [InlineData(Sex.Male, 85, 25.79, 5.60)]
    [InlineData(Sex.Female, 43.5, 16.54, 2.14)]
    [InlineData(Sex.Female, 63.5, 18.99, 2.18)]
    [InlineData(Sex.Female, 85, 22.49, 6.02)]
    public void Peg_times_are_those_recalled_and_the_table_says_that_they_are(Sex sex, double age, double mean, double sd)
    {
        var curve = Norms.NineHolePeg.For(age, sex).Curve;

        Assert.Equal(mean, curve.Median, 1e-9);
        Assert.Equal(1, curve.ZScore(mean + sd), 1e-9);
        Assert.Equal(Basis.FromMemory, Norms.NineHolePeg.Basis);
    }

    [Fact]
    public void Between_the_middles_of_two_bands_the_norm_runs_straight()
    {
        // Men, median: 42.4 kg at 62.5 years and 40.1 kg at 67.5 years.
        Assert.Equal(41.25 * HandData.NewtonsInKilogram, Norms.Grip.For(65, Sex.Male).Curve.Median, 1e-6);
        Assert.Equal((42.4 - (0.2 * 2.3)) * HandData.NewtonsInKilogram, Norms.Grip.For(63.5, Sex.Male).Curve.Median, 1e-6);
    }

    [Theory]
    [InlineData(19.9, true)]
    [InlineData(20, false)]
    [InlineData(104, false)]
    public void An_age_that_the_grip_table_lacks_is_flagged(double age, bool outside)
    {
        Assert.Equal(outside, Norms.Grip.For(age, Sex.Female).IsOutsideTable);
        Assert.Equal(outside, Norms.Grip.For(age, Sex.Unstated).IsOutsideTable);
    }

    [Fact]
    public void Beyond_its_table_pinch_falls_with_grip_and_says_so()
    {
        var oldest = Norms.Pinch(69.9, Sex.Male);
        var older = Norms.Pinch(82.5, Sex.Male);

        Assert.False(oldest.IsOutsideTable);
        Assert.True(older.IsOutsideTable);

        // Worked by hand: 21.6 lb · 32.3 / 41.25, the grip medians at 82.5 and 65 years.
        Assert.Equal(21.6 * 32.3 / 41.25 * 4.4482216152605, older.Curve.Median, 1e-6);
    }

    [Fact]
    public void An_unstated_sex_lies_between_the_two_and_halves_the_group() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[0.06, 0.94]).Sample(
            (age, u) =>
            {
                var women = Norms.Grip.For(age, Sex.Female).Curve;
                var men = Norms.Grip.For(age, Sex.Male).Curve;
                double x = Norms.Grip.For(age, Sex.Unstated).Curve.At(u);
                Assert.InRange(x, women.At(u), men.At(u));

                // Between its knots the mixture's curve is straight, which costs up to two percentiles.
                Assert.Equal(u, (women.Percentile(x) + men.Percentile(x)) / 2, 0.02);
            },
            iter: 1_000);

    [Fact]
    public void Percentile_and_value_undo_each_other_for_every_age_and_sex() =>
        Gen.Select(Gen.Double[10, 110], Gen.Enum<Sex>(), Gen.Double[0.001, 0.999]).Sample(
            (age, sex, u) =>
            {
                foreach (var curve in new[] { Norms.Grip.For(age, sex).Curve, Norms.Pinch(age, sex).Curve, Norms.NineHolePeg.For(age, sex).Curve })
                {
                    Assert.True(curve.At(u) > 0);
                    Assert.Equal(u, curve.Percentile(curve.At(u)), 1e-9);
                }
            },
            iter: 1_000);

    [Theory]
    [InlineData("\"unit\": \"kgf\"", "\"unit\": \"kgf\", \"units\": \"kgf\"")]
    [InlineData("\"unit\": \"kgf\"", "\"unit\": \"hands\"")]
    [InlineData("\"sex\": \"male\", \"from\": 20", "\"sex\": 1, \"from\": 20")]
    [InlineData("\"sex\": \"male\", \"from\": 20", "\"sex\": \"man\", \"from\": 20")]
    [InlineData("[33.9, 36.8,", "[33.9, 33.8,")]
    [InlineData("[33.9, 36.8,", "[36.8,")]
    [InlineData("\"from\": 25, \"to\": 29", "\"from\": 24, \"to\": 29")]
    [InlineData("\"from\": 25, \"to\": 29", "\"from\": 26, \"to\": 29")]
    [InlineData("\"basis\": \"published\",", "")]
    public void A_norm_file_with_a_fault_is_refused(string right, string wrong)
    {
        using var stream = typeof(BuiltInNorms).Assembly.GetManifestResourceStream("norms.json")!;
        string text = new StreamReader(stream).ReadToEnd();
        int at = text.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0);
        BuiltInNorms.ParseNorms(text);

        Assert.Throws<JsonException>(() => BuiltInNorms.ParseNorms(text[..at] + wrong + text[(at + right.Length)..]));
    }
}
