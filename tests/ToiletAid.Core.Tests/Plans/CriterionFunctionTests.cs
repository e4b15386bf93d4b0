using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Cost;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Plans;

public sealed class CriterionFunctionTests
{
    private static readonly PersonView Able = new(Cases.Knowledge.Evidence, Assumptions.Fill(Cases.Knowledge.Questions, Cases.Able));

    private static CriterionFunctions Functions => new(Cases.Knowledge);

    /// <summary>What is ranked and what is told of a month are one sum, or a clinic's add-on would look cheaper than it is.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(12.5)]
    public void Upkeep_counts_the_month_that_is_told(double usedUp)
    {
        var plan = TrialCases.Plan("long-clamp", addOns: "hand-cuff");
        AddOn cuff = plan.AddOns[0] with { Upkeep = plan.AddOns[0].Upkeep with { MonthlyConsumables = Prices.Set(usedUp) } };
        plan = plan with { AddOns = [cuff] };

        double told = PlanSetup.Of(Cases.Knowledge, plan, Able.StoolType, Able.CleansPerDay, burnsSooner: false).MonthlyCost.Total;

        Assert.True(told > usedUp);
        Assert.Equal(1 / (1 + (told / Cases.Knowledge.Evidence.Value(EvidenceIds.UpkeepHalf))), Functions.Upkeep(plan, Able), 1e-12);
    }

    /// <summary>A wash that comes last leaves the skin wet, whatever went before it; with a pat after it, it does not.</summary>
    [Fact]
    public void A_wash_that_comes_last_leaves_the_skin_wet()
    {
        double washLast = Functions.Cleaning(TrialCases.Plan("by-hand", "squeeze-wash"), Able);
        double share = Cases.Knowledge.Evidence.Value(EvidenceIds.CleaningCompanionShare), wet = Cases.Knowledge.Evidence.Value(EvidenceIds.CleaningWetLeft);
        double hand = Functions.Cleaning(TrialCases.Plan("by-hand"), Able), wash = Functions.Cleaning(TrialCases.Plan("squeeze-wash"), Able) / wet;

        Assert.Equal((1 - ((1 - hand) * (1 - (share * wash)))) * wet, washLast, 1e-12);
    }

    /// <summary>A clinic's own stock may let a wash follow: its water is prepared like any other.</summary>
    [Fact]
    public void The_water_of_a_wash_that_follows_is_prepared_too()
    {
        var setup = PlanSetup.Of(Cases.Knowledge, TrialCases.Plan("by-hand", "squeeze-wash"), 4, 1, burnsSooner: true);

        Assert.NotNull(setup.Spray);
        Assert.True(setup.Mix!.Celsius <= Cases.Knowledge.Water.LimitCelsius(burnsSooner: true) + 1e-9);
    }

    /// <summary>Six levels of CMS GG0130C set evenly from 0 to 1, worked out by hand: alone 1, set-up help 0.8, prompts 0.6, all by another 0.</summary>
    [Theory]
    [InlineData("long-clamp", null, null, null, 1)]
    [InlineData("helper-wipe", null, null, null, 0)]
    [InlineData("tongs", "prepared-paper", "dexterity", "cannot", 0.8)]
    [InlineData("tongs", "prepared-paper", "dexterity", "slow", 1)]
    [InlineData("tongs", null, "dexterity", "cannot", 1)]
    [InlineData("by-hand", "prepared-paper", "steps", "one", 0.8)]
    [InlineData("by-hand", "prepared-paper", "steps", "two-or-three", 1)]
    [InlineData("by-hand", null, "steps", "one", 1)]
    [InlineData("tongs", null, "steps", "one", 0.6)]
    [InlineData("helper-wipe", null, "steps", "one", 0)]
    public void Independence_is_what_another_person_need_not_do(string aid, string? addOn, string? question, string? option, double alone)
    {
        var answers = question is null ? Cases.Able : Cases.Able.Choose(question, option!);
        var view = new PersonView(Cases.Knowledge.Evidence, Assumptions.Fill(Cases.Knowledge.Questions, answers));

        Assert.Equal(alone, Functions.Independence(TrialCases.Plan(aid, addOns: addOn is null ? [] : [addOn]), view), 1e-12);
    }
}
