using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Tests.Hand;
using ToiletAid.Core.Water;

namespace ToiletAid.Core.Tests.Water;

public sealed class WaterTests
{
    private static readonly WaterCoefficients Numbers = BuiltInSupplies.Load().Water;

    /// <summary>Seen table of burn times (Moritz and Henriques type), partial thickness, typed in again.</summary>
    [Theory]
    [InlineData(45, 2 * 60 * 60)]
    [InlineData(47, 20 * 60)]
    [InlineData(48, 15 * 60)]
    [InlineData(51, 2 * 60)]
    [InlineData(55, 17)]
    [InlineData(60, 3)]
    public void Burn_times_are_those_of_the_table(double celsius, double seconds)
    {
        var time = Numbers.Burns.At(celsius);
        Assert.Equal(BurnBound.About, time.Bound);
        Assert.Equal(seconds, time.Seconds, 1e-9);
    }

    /// <summary>Where sources differ, no longer time is quoted than the shortest of them. CPSC alert 5098: 120 F 5 min, 130 F 30 s, 140 F 6 s;
    /// a children's burn charity: 125 F 1.5 min, 135 F 10 s, 140 F 5 s.</summary>
    [Theory]
    [InlineData(120, 300)]
    [InlineData(125, 90)]
    [InlineData(130, 30)]
    [InlineData(135, 10)]
    [InlineData(140, 5)]
    public void No_source_gives_a_shorter_time_than_is_quoted(double fahrenheit, double seconds) =>
        Assert.InRange(Numbers.Burns.At((fahrenheit - 32) / 1.8).Seconds, 0, seconds);

    [Theory]
    [InlineData(44.9, BurnBound.MoreThan, 7200)]
    [InlineData(20, BurnBound.MoreThan, 7200)]
    [InlineData(60.1, BurnBound.LessThan, 3)]
    [InlineData(95, BurnBound.LessThan, 3)]
    public void Beyond_the_table_only_a_bound_is_given(double celsius, BurnBound bound, double seconds) =>
        Assert.Equal(new(bound, seconds), Numbers.Burns.At(celsius));

    [Fact]
    public void Hotter_water_never_takes_longer_to_burn() =>
        Gen.Select(Gen.Double[30, 80], Gen.Double[30, 80]).Sample(
            (a, b) => Assert.True(Numbers.Burns.At(Math.Max(a, b)).Seconds <= Numbers.Burns.At(Math.Min(a, b)).Seconds),
            iter: 2_000);

    [Fact]
    public void A_burn_table_out_of_order_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new BurnTable([new(45, 100), new(50, 100)], Basis.Decision, "test"));
        Assert.Throws<ArgumentException>(() => new BurnTable([new(50, 100), new(45, 10)], Basis.Decision, "test"));
        Assert.Throws<ArgumentException>(() => new BurnTable([new(45, 100)], Basis.Decision, "test"));
        Assert.Throws<ArgumentException>(() => new BurnTable([new(45, 100), new(50, 0)], Basis.Decision, "test"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Numbers.Burns.At(double.NaN));
    }

    /// <summary>UK scheme for thermostatic mixing valves: 38 C for bidets.</summary>
    [Fact]
    public void The_limit_is_that_for_bidets_and_lower_where_feeling_is_poor()
    {
        Assert.Equal(38, Numbers.LimitCelsius(burnsSooner: false));
        Assert.InRange(Numbers.LimitCelsius(burnsSooner: true), 35, 37.5);
        Assert.True(Numbers.UsualTargetCelsius < Numbers.LimitCelsius(burnsSooner: true));
    }

    /// <summary>Heat balance worked by hand.</summary>
    [Theory]
    [InlineData(36, 60, 12, 0.5, 1, 1)]
    [InlineData(37, 55, 10, 0.6, 3, 2)]
    [InlineData(30, 60, 20, 0.25, 1, 3)]
    [InlineData(35, 65, 5, 0.5, 1, 1)]
    [InlineData(12, 60, 12, 0, 0, 1)]
    [InlineData(38, 38, 10, 1, 1, 0)]
    public void Hot_and_cold_are_mixed_by_heat_balance(double wish, double hot, double cold, double hotShare, int hotParts, int coldParts)
    {
        var mix = WaterMix.Of(wish, 38, hot, cold, 0.001);

        Assert.Equal(hotShare * 0.001, mix.HotCubicMetres, 1e-12);
        Assert.Equal((1 - hotShare) * 0.001, mix.ColdCubicMetres, 1e-12);
        Assert.Equal(wish, mix.Celsius, 1e-9);
        Assert.Equal((hotParts, coldParts), (mix.Parts.Hot, mix.Parts.Cold));
        Assert.False(mix.IsLoweredToLimit || mix.IsOutOfReach || mix.IsAboveLimit);
    }

    [Fact]
    public void A_wish_above_the_limit_is_lowered_to_it()
    {
        var mix = WaterMix.Of(45, 38, 60, 10, 0.001);
        Assert.Equal(38, mix.Celsius, 1e-9);
        Assert.True(mix.IsLoweredToLimit);

        // 28 / 50 hot; of the ratios with at most eight parts, one to one is the nearest that is not warmer.
        Assert.Equal(0.56e-3, mix.HotCubicMetres, 1e-12);
        Assert.Equal(new PartsOfWater(1, 1, 35), mix.Parts);
    }

    [Fact]
    public void Supplies_that_cannot_give_the_temperature_say_so()
    {
        Assert.True(WaterMix.Of(36, 38, 30, 10, 1).IsOutOfReach);
        Assert.Equal(30, WaterMix.Of(36, 38, 30, 10, 1).Celsius, 1e-9);
        Assert.True(WaterMix.Of(36, 38, 60, 42, 1).IsAboveLimit);
    }

    [Fact]
    public void Heat_is_neither_lost_nor_made_and_the_limit_holds() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[30, 40], Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[0, 0.01]).Sample(
            (wish, limit, a, b, volume) =>
            {
                double hot = Math.Max(a, b), cold = Math.Min(a, b);
                var mix = WaterMix.Of(wish, limit, hot, cold, volume);

                Assert.Equal(volume, mix.HotCubicMetres + mix.ColdCubicMetres, 1e-12);
                Assert.Equal(volume * mix.Celsius, (mix.HotCubicMetres * hot) + (mix.ColdCubicMetres * cold), 1e-9);
                Assert.True(mix.HotCubicMetres >= 0 && mix.ColdCubicMetres >= 0);
                Assert.Equal(mix.IsAboveLimit, cold > limit + 1e-6);
                Assert.True(mix.IsAboveLimit || mix.Celsius <= limit + 1e-6);
                Assert.True(mix.Parts.Celsius <= mix.Celsius + 1e-6, $"{mix}");
                Assert.InRange(mix.Parts.Hot + mix.Parts.Cold, 1, 8);
            },
            iter: 5_000);

    [Theory]
    [InlineData(36, 38, 10, 60, 1)]
    [InlineData(double.NaN, 38, 60, 10, 1)]
    [InlineData(36, 38, 60, -5, 1)]
    [InlineData(36, 38, 60, 10, -1)]
    [InlineData(36, 101, 60, 10, 1)]
    public void Impossible_water_is_refused(double wish, double limit, double hot, double cold, double volume) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterMix.Of(wish, limit, hot, cold, volume));

    [Fact]
    public void Spray_time_is_reservoir_over_flow_at_both_strengths()
    {
        // Worked by hand: 180 ml at 4 and 7 ml/s, 160 ml a clean, 280 g empty.
        var spray = SprayTime.Of(HandData.Aid("spray-wash"))!;
        Assert.Equal(45, spray.GentleSecondsPerFilling!.Value, 1e-9);
        Assert.Equal(25.714, spray.StrongSecondsPerFilling!.Value, 0.001);
        Assert.Equal(40, spray.GentleSecondsPerClean, 1e-9);
        Assert.Equal(0, spray.RefillsPerClean);
        Assert.Equal(0.46, spray.FullKilograms, 1e-9);
    }

    [Theory]
    [InlineData(150, 0)]
    [InlineData(180, 0)]
    [InlineData(181, 1)]
    [InlineData(360, 1)]
    [InlineData(361, 2)]
    public void A_clean_that_takes_more_than_a_filling_needs_refills(double millilitres, int refills)
    {
        var aid = HandData.Aid("spray-wash");
        var need = aid.Water!.PerClean with { Value = millilitres * 1e-6 };
        Assert.Equal(refills, SprayTime.Of(aid with { Water = aid.Water with { PerClean = need } })!.RefillsPerClean);
    }

    [Fact]
    public void Mains_water_has_no_filling_and_paper_no_spray()
    {
        var hose = SprayTime.Of(HandData.Aid("hose-wash"))!;
        Assert.Null(hose.GentleSecondsPerFilling);
        Assert.Equal(0, hose.RefillsPerClean);
        Assert.Null(SprayTime.Of(HandData.Aid("tongs")));
    }
}
