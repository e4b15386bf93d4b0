using System.Collections.Immutable;
using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Cost;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Tests.Hand;
using ToiletAid.Core.Water;

namespace ToiletAid.Core.Tests.Cost;

public sealed class CostTests
{
    private static readonly BuiltInSupplies Supplies = BuiltInSupplies.Load();

    private static readonly Prices Set = new(Prices.Set(0.5), Prices.Set(0.1), Prices.Set(5));

    private static Aid Priced(string id, double price, double years, double consumables) =>
        HandData.Aid(id) with { Upkeep = new(Prices.Set(price), Prices.Set(years), Prices.Set(consumables)) };

    [Fact]
    public void A_month_is_purchase_over_life_and_what_is_used_up()
    {
        // Worked by hand: 48 over 4 years is 1 a month; 2.435 rolls at 0.50 are 1.2175.
        var aid = Priced("long-clamp", 48, 4, 0.25);
        var paper = PaperNeed.Of(aid.Paper!, 4, 2, Supplies.Paper);
        var cost = MonthlyCost.Of(aid, [], MonthlyUse.Of(aid, paper, 2), Set);

        Assert.Equal([CostKind.Purchase, CostKind.Consumables, CostKind.Paper], cost.Parts.Select(p => p.Kind));
        Assert.Equal(1 + 0.25 + 1.2175, cost.Total, 1e-9);
        Assert.Equal((cost.Total, cost.Total), (cost.Low, cost.High));
        Assert.False(cost.HasPlaceholder);
    }

    [Fact]
    public void Add_ons_are_bought_too()
    {
        var aid = Priced("long-clamp", 48, 4, 0);
        var cuff = HandData.AddOn("hand-cuff") with { Upkeep = new(Prices.Set(12), Prices.Set(2), Prices.Set(0)) };
        Assert.Equal(1.5, MonthlyCost.Of(aid, [cuff], new(0, 0, 0), Set).Total, 1e-12);
    }

    [Fact]
    public void Wipes_are_counted_a_pass_and_water_a_clean()
    {
        // 3 passes, 2 cleans a day, 30.4375 days; 1200 ml a clean.
        Assert.Equal(182.625, MonthlyUse.Of(HandData.Aid("wipe-moist"), null, 2).Wipes, 1e-9);
        Assert.Equal(0.07305, MonthlyUse.Of(HandData.Aid("hose-wash"), null, 2).WaterCubicMetres, 1e-9);
        Assert.Equal(0, MonthlyUse.Of(HandData.Aid("hose-wash"), null, 2).Wipes);
    }

    [Fact]
    public void A_price_is_a_placeholder_until_the_clinic_sets_it()
    {
        var aid = HandData.Aid("long-clamp");
        var use = MonthlyUse.Of(aid, PaperNeed.Of(aid.Paper!, 4, 2, Supplies.Paper), 2);
        Assert.True(MonthlyCost.Of(aid, [], use, Supplies.Prices).HasPlaceholder);
        Assert.All([Supplies.Prices.Roll, Supplies.Prices.Wipe, Supplies.Prices.WaterCubicMetre], p => Assert.Equal(Basis.Estimate, p.Basis));

        var own = Priced("long-clamp", 40, 4, 0);
        var half = MonthlyCost.Of(own, [], use, Supplies.Prices);
        Assert.Equal([CostKind.Paper], half.Parts.Where(p => p.IsPlaceholder).Select(p => p.Kind));
        Assert.False(MonthlyCost.Of(own, [], use, Set).HasPlaceholder);
    }

    [Fact]
    public void What_costs_nothing_is_no_placeholder() =>
        Assert.False(MonthlyCost.Of(HandData.Aid("by-hand"), [], new(0, 0, 0), Supplies.Prices).HasPlaceholder);

    [Fact]
    public void A_method_and_its_companion_add_up_whichever_comes_first() =>
        Gen.Select(HandData.Plans, HandData.Plans, Gen.Double[0, 8]).Sample(
            (first, second, cleans) =>
            {
                var a = Monthly(first, cleans);
                var b = Monthly(second, cleans);
                var both = a + b;
                Assert.Equal(a.Total + b.Total, both.Total, 1e-9);
                Assert.Equal((b + a).Total, both.Total, 1e-9);
                Assert.Equal(a.HasPlaceholder || b.HasPlaceholder, both.HasPlaceholder);
                Assert.Equal(both.Parts.Select(p => p.Kind).Distinct().Order(), both.Parts.Select(p => p.Kind));
            },
            iter: 1_000);

    [Fact]
    public void The_range_encloses_the_sum_and_more_cleans_never_cost_less() =>
        Gen.Select(HandData.Plans, Gen.Double[0, 8], Gen.Double[0, 8]).Sample(
            (plan, a, b) =>
            {
                var less = Monthly(plan, Math.Min(a, b));
                var more = Monthly(plan, Math.Max(a, b));
                Assert.InRange(less.Total, less.Low, less.High);
                Assert.True(more.Total >= less.Total);
                Assert.True(less.Low >= 0);
            },
            iter: 1_000);

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_price_that_is_none_is_refused(double amount) => Assert.Throws<ArgumentOutOfRangeException>(() => Prices.Set(amount));

    [Fact]
    public void An_aid_that_lasts_no_time_is_refused() =>
        Assert.Throws<ArgumentException>(() => MonthlyCost.Of(Priced("tongs", 10, 0, 0), [], new(0, 0, 0), Set));

    [Fact]
    public void Every_number_of_the_supplies_is_needed_and_missed_at_once()
    {
        var stool = Enumerable.Range(1, 7).Select(Supplies.Paper.For).ToImmutableArray();
        foreach (string id in Supplies.Numbers.Ids)
        {
            var without = new NumberTable(Supplies.Numbers.Ids.Where(i => i != id).Select(i => KeyValuePair.Create(i, Supplies.Numbers[i])));
            Assert.Throws<KeyNotFoundException>(() => (new PaperCoefficients(without, stool), new WaterCoefficients(without, Supplies.Water.Burns), Prices.From(without)));
        }
    }

    private static MonthlyCost Monthly((Aid Aid, AddOn[] AddOns) plan, double cleans)
    {
        var paper = plan.Aid.Paper is { } use ? PaperNeed.Of(use, 4, cleans, Supplies.Paper) : null;
        return MonthlyCost.Of(plan.Aid, plan.AddOns, MonthlyUse.Of(plan.Aid, paper, cleans), Supplies.Prices);
    }
}
