using System.Collections.Concurrent;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>Every plan of every shortlist of simulated people, against a checker that shares no code with the program.</summary>
public sealed class HazardCheckerTests
{
    private static readonly string[] OneOf = ["posture", "place", "skin", "feeling", "precaution-side", "feeling-since"];
    private static readonly string[] AnyOf = ["precautions", "conditions", "red-flags"];

    private static readonly DateOnly Day = new(2026, 3, 9);

    /// <summary>One weighting and one person drawn: what is offered and what is said rests on the middle case.</summary>
    private static readonly AdviceSettings Bare = new() { ValueDraws = 1, WeightDraws = 8, ReachesKept = 8192, AsksGrip = false };

    [Theory]
    [InlineData(Depth.Full, 150)]
    [InlineData(Depth.Quick, 150)]
    public void Nothing_forbidden_is_advised_and_nothing_needed_is_left_unsaid(Depth depth, int people) => Check(depth, people, 20260309, a => a);

    /// <summary>HAZARD_PEOPLE says how many, HAZARD_SEED which. Build and joints are left out, so that reach is worked out once for many: what is checked here does not depend on them.</summary>
    [Fact]
    [Trait("Speed", "Slow")]
    public void Thousands_of_people_are_given_nothing_that_the_table_forbids() => Check(
        Depth.Full, int.Parse(Environment.GetEnvironmentVariable("HAZARD_PEOPLE") ?? "10000", CultureInfo.InvariantCulture), ulong.Parse(Environment.GetEnvironmentVariable("HAZARD_SEED") ?? "7", CultureInfo.InvariantCulture),
        a => a.Without(QuestionIds.Stature).Without(QuestionIds.Mass).Without(QuestionIds.Joints) is var b && b.Si(QuestionIds.Age) > 65 ? b.Choose("age", 80) : b.Choose("age", 45));

    [Fact]
    public void The_simulated_people_cover_every_posture_place_precaution_condition_and_skin()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        Answers[] people = [.. Enumerable.Range(0, 4000).Select(i => simulator.Make(7, i, Depth.Full, Day).Sessions[0].Answers)];

        Assert.All(OneOf, q => Assert.Equal(
            Cases.Knowledge.Questions[new(q)].Options.Select(o => o.Id).Order(StringComparer.Ordinal),
            people.Select(p => p.Choice(new(q))).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)));
        Assert.All(AnyOf, q => Assert.Equal(
            Cases.Knowledge.Questions[new(q)].Options.Select(o => o.Id).Order(StringComparer.Ordinal),
            people.SelectMany(p => p.Many(new(q)) ?? []).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)));
    }

    /// <summary>A checker that finds nothing has to be seen to find something.</summary>
    [Theory]
    [InlineData("skin", "pressure-injury", "long-clamp", "rubs")]
    [InlineData("fixtures", "no", "seat-wash", "fixtures")]
    [InlineData("reach-behind", "outer-buttock", "by-hand", "bare hand")]
    [InlineData("feeling", "none", "squeeze-wash", "scald")]
    [InlineData("posture", "side-lying", "by-hand", "lies")]
    [InlineData("dexterity", "cannot", "tongs", "folded each time")]
    public void The_checker_finds_what_is_put_before_it(string question, string option, string aid, string says)
    {
        var able = Cases.Able.Advice();
        var one = able with { Ranked = [able.Place(aid) with { Plan = TrialCases.Plan(aid, approach: able.Place(aid).Plan.Approach) }] };

        Assert.Contains(HazardChecker.Faults(Cases.Able.Choose(question, option), one), f => f.Contains(says, StringComparison.Ordinal));
        Assert.Empty(HazardChecker.Faults(Cases.Able, able));
    }

    /// <summary>A variant brings what the kind has not: silicone at the skin, where the kind has none.</summary>
    [Fact]
    public void The_checker_sees_what_a_variant_brings_and_a_variant_that_its_plan_does_not_know()
    {
        var able = Cases.Able.Advice();
        var kind = Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == "long-clamp");
        var plan = able.Place("long-clamp").Plan with { Aid = kind };
        var soft = plan.As(kind.Variants.Single(v => v.Id == "soft-tip"));
        Advice Only(Core.Plans.Plan of) => able with { Ranked = [able.Place("long-clamp") with { Plan = of }] };
        var allergic = Cases.Able.Mark("precautions", "allergy-silicone");

        Assert.Contains(HazardChecker.Faults(allergic, Only(soft)), f => f.Contains("silicone in spite of an allergy", StringComparison.Ordinal));
        Assert.DoesNotContain(HazardChecker.Faults(allergic, Only(plan)), f => f.Contains("silicone", StringComparison.Ordinal));
        Assert.Contains(HazardChecker.Faults(Cases.Able, Only(soft with { Aid = soft.Aid with { Tip = Core.Catalogue.Tip.Hard } })), f => f.Contains("not as its variant is", StringComparison.Ordinal));
        Assert.Empty(HazardChecker.Faults(Cases.Able, Only(soft)));
    }

    /// <summary>A first place has at most two warnings of high or above for nine in ten: more are not heeded. No warning is said twice in one result, and what
    /// holds for every plan is said before the first.</summary>
    [Fact]
    public void Warnings_are_few_enough_to_be_heeded_and_said_once()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        var advisor = new Advisor(Cases.Knowledge, Bare);
        var words = new App.Wording.AdviceText(Cases.Knowledge);
        var firsts = new List<int>();
        for (int i = 0; i < TestRun.Times(1000, 200); i++)
        {
            var answers = Plain(simulator.Make(11, i, Depth.Full, Day).Sessions[0].Answers);
            var advice = advisor.Advise(answers);
            if (advice.Ranked.IsEmpty)
            {
                continue;
            }

            firsts.Add(advice.Ranked[0].Cautions.Count(c => c.Rule.Severity <= Core.Knowledge.Severity.High));
            string[] lines = [.. words.Lines(advice, answers, 20)];
            string[] said = [.. lines.Where(l => l.StartsWith("Caution, ", StringComparison.Ordinal))];
            Assert.Equal(said.Distinct(StringComparer.Ordinal), said);
            Assert.All(advice.ForEveryPlan, f => Assert.InRange(
                Array.FindIndex(lines, l => l.EndsWith(App.Wording.AdviceText.Sentence(f), StringComparison.Ordinal)), 0, Array.FindIndex(lines, l => l.StartsWith("Place 1.", StringComparison.Ordinal))));
        }

        Assert.True(firsts.Count > 100, $"{firsts.Count} people");
        Assert.True(firsts.Count(n => n <= 2) >= 0.9 * firsts.Count, $"{firsts.Count(n => n <= 2)} of {firsts.Count}");
    }

    private static Answers Plain(Answers a) => a.Without(QuestionIds.Stature).Without(QuestionIds.Mass).Without(QuestionIds.Joints);

    private static void Check(Depth depth, int people, ulong seed, Func<Answers, Answers> keep)
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        var faults = new ConcurrentQueue<string>();
        int plans = 0;
        int parts = Environment.ProcessorCount;
        Parallel.For(0, parts, part =>
        {
            var advisor = new Advisor(Cases.Knowledge, Bare);
            for (int i = part; i < people && faults.Count < 20; i += parts)
            {
                var answers = keep(simulator.Make(seed, i, depth, Day).Sessions[0].Answers);
                var advice = advisor.Advise(answers);
                Interlocked.Add(ref plans, advice.Ranked.Length);
                foreach (string fault in HazardChecker.Faults(answers, advice))
                {
                    faults.Enqueue($"person {i.ToString(CultureInfo.InvariantCulture)}, {fault}");
                }
            }
        });

        Assert.True(plans > people, $"only {plans} plans");
        Assert.Empty(faults);
    }
}
