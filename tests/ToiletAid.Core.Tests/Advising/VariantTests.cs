using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Ranking;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Tests.Advising;

/// <summary>A variant is chosen only where it matters: never where the kind as it usually is is as good, and always told.</summary>
public sealed class VariantTests(ITestOutputHelper output)
{
    private static readonly AdviceSettings Bare = new() { ValueDraws = 1, WeightDraws = 8, ReachesKept = 256, AsksGrip = false };

    private static readonly DateOnly Day = new(2026, 3, 9);

    private static Aid Kind(string id) => Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == id);

    /// <summary>The worth is put together here anew: reach by itself, the rest only as far as the skin is reached, and the price of each thing that is added.</summary>
    [Fact]
    public void A_variant_is_never_chosen_where_the_kind_is_as_good_and_never_makes_less_possible()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        Advisor varied = new(Cases.Knowledge, Bare), usual = varied.With(Cases.AsUsual);
        double gain = Cases.Knowledge.Evidence.Value(EvidenceIds.PlansAddOnGain);
        int chosen = 0, onlySo = 0;
        for (int i = 0; i < TestRun.Times(600, 150); i++)
        {
            var answers = simulator.Make(22, i, i % 2 == 0 ? Depth.Full : Depth.Quick, Day).Sessions[0].Answers;
            if (!varied.Stops(answers).IsEmpty)
            {
                continue;
            }

            var (with, without) = (varied.Screened(answers), usual.Screened(answers));
            Assert.Subset(with.Offered.Select(o => o.Plan.Aid.Id).ToHashSet(StringComparer.Ordinal), without.Offered.Select(o => o.Plan.Aid.Id).ToHashSet(StringComparer.Ordinal));
            foreach (var offer in with.Offered)
            {
                var same = without.Offered.FirstOrDefault(o => o.Plan.Aid.Id == offer.Plan.Aid.Id);
                if (offer.Plan.Variant is null)
                {
                    Assert.Equal(same!.Plan.Key, offer.Plan.Key);
                    continue;
                }

                chosen++;
                if (same is null)
                {
                    onlySo++;
                    Assert.Equal(without.RuledOut.Single(r => r.Aid.Id == offer.Plan.Aid.Id).Reasons.Select(r => r.Rule.Id), offer.Otherwise.Select(r => r.Rule.Id));
                    continue;
                }

                Assert.Empty(offer.Otherwise);
                double earned = Worth(with.Hands, with.Appraiser, with.Weights.Set, offer.Plan, gain) - Worth(with.Hands, with.Appraiser, with.Weights.Set, same.Plan, gain);
                Assert.True(earned > gain, $"person {i}, {offer.Plan.Key} earns {earned} over {same.Plan.Key}");
            }
        }

        Assert.True(chosen > 20 && onlySo > 2, $"{chosen} chosen, {onlySo} possible only so");
    }

    /// <summary>Tips for other care are heavier and dearer and serve what this tool does not ask for. The lever of the short holder takes less force than its button, but the
    /// button is pushed on the thigh by the arm, which has enough where the hand can tuck paper at all.</summary>
    [Fact]
    [Trait("Speed", "Slow")]
    public void Every_variant_but_two_is_chosen_by_somebody()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        var advisor = new Advisor(Cases.Knowledge, Bare);
        var chosen = Enumerable.Range(0, 3000)
            .Select(i => simulator.Make(24, i, i % 2 == 0 ? Depth.Full : Depth.Measured, Day).Sessions[0].Answers)
            .Where(a => advisor.Stops(a).IsEmpty)
            .SelectMany(a => advisor.Screened(a).Offered.Select(o => o.Plan.Aid).Where(a => a.Variant is not null).Select(a => a.Key))
            .CountBy(k => k)
            .ToDictionary(StringComparer.Ordinal);

        output.WriteLine(string.Join(", ", chosen.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"{c.Key} {c.Value}")));
        Assert.Equal(
            ["long-clamp:care-tips", "short-soft:lever"],
            Cases.Knowledge.Catalogue.Aids.SelectMany(a => a.Variants.Select(v => a.As(v).Key)).Where(k => !chosen.ContainsKey(k)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Whatever_looks_at_the_plan_sees_its_variant_and_the_plan_without_one_is_as_before()
    {
        var kind = Kind("short-soft");
        var narrow = kind.Variants.Single(v => v.Id == "narrow-head");
        var plan = new Plan { Aid = kind, AddOns = [], Posture = Posture.Seated, Approach = Approach.Behind };
        var other = plan.As(narrow);

        Assert.Equal("short-soft>@Seated/Behind", plan.Key);
        Assert.NotEqual(plan.Key, other.Key);
        Assert.Equal(narrow.TipWidth, other.Aid.TipWidth);
        Assert.Equal(kind.Length, other.Aid.Length);
        Assert.Equal(kind.Id, other.Aid.Id);
        Assert.StartsWith("Short folding holder with soft narrow head, from behind", PlanText.Name(other), StringComparison.Ordinal);
        Assert.Null(TriedPlan.Of(plan).Variant);
        Assert.Equal(other.Key, TriedPlan.Of(other).In(Cases.Knowledge.Catalogue)!.Key);
        Assert.Null((TriedPlan.Of(other) with { Variant = "no-such" }).In(Cases.Knowledge.Catalogue));
    }

    [Fact]
    public void A_kind_that_its_usual_form_rules_out_is_possible_in_a_variant_and_says_so()
    {
        var answers = Cases.Able.Choose("skin", "radiotherapy");
        var ranked = answers.Advice().Place("long-clamp");

        Assert.Equal("soft-tip", ranked.Plan.Variant?.Id);
        Assert.NotEmpty(ranked.Otherwise);
        Assert.NotNull(new Advisor(Cases.AsUsual, Cases.Quick).Advise(answers).WhyNot("long-clamp"));
        Assert.StartsWith("Only with a soft tip. Otherwise: ", Assert.Single(AdviceText.OnlySo(ranked)), StringComparison.Ordinal);
        Assert.Empty(AdviceText.OnlySo(Cases.Able.Advice().Ranked[0]));
        Assert.NotNull(answers.Mark("precautions", "allergy-silicone").Advice().WhyNot("long-clamp"));
    }

    /// <summary>What was worked out for a kind must not be found for its variant.</summary>
    [Fact]
    public void Every_variant_replaces_something_and_is_told_apart()
    {
        foreach (var kind in Cases.Knowledge.Catalogue.Aids.Where(a => !a.Variants.IsEmpty))
        {
            ImmutableArray<Aid> all = [kind, .. kind.Variants.Select(kind.As)];
            Assert.Equal(all.Length, all.Select(a => a.Key).Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(all.Length, all.Select(a => a.Name).Distinct(StringComparer.Ordinal).Count());
            Assert.All(all.Skip(1), v => Assert.NotEqual(kind, v with { Name = kind.Name, Variants = kind.Variants, Variant = null }));
        }
    }

    private static double Worth(HandTasks hands, Appraiser appraiser, WeightSet weights, Plan plan, double gain)
    {
        double[] values = hands.Values(plan, appraiser.Middle);
        double arrives = appraiser.Arrives(plan, values, appraiser.Middle), sum = weights.Centroid[(int)Criterion.Reach] * values[(int)Criterion.Reach];
        for (int c = 0; c < values.Length; c++)
        {
            sum += c == (int)Criterion.Reach ? 0 : arrives * weights.Centroid[c] * values[c];
        }

        return sum - (gain * plan.AddOns.Count(a => a.OnlyHelps));
    }
}
