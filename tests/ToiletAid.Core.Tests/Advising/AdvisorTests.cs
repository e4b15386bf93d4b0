using CsCheck;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Advising;

public sealed class AdvisorTests
{
    /// <summary>Answers that only make a person more able, each with the better answer after the worse.</summary>
    private static readonly (string Question, string[] Rising)[] Abilities =
    [
        ("reach-behind", ["not-past-the-hip", "outer-buttock", "the-cleft", "tailbone", "waist-or-above"]),
        ("hands-free", ["one", "two"]),
        ("dexterity", ["cannot", "slow", "usual"]),
        ("tremor", ["marked", "some", "none"]),
        ("steps", ["one", "two-or-three", "four-or-more"]),
        ("grasp", ["none", "press-with-forearm", "press-with-palm-or-fist", "whole-hand", "fine-pinch"]),
    ];

    /// <summary>The hand alone is first where it reaches: common practice, every aid must earn its place.</summary>
    [Fact]
    public void Somebody_who_needs_no_aid_gets_none() => Assert.Equal("by-hand", Cases.Able.Advice().Offered().First());

    /// <summary>A stiff shoulder needs an aid that lengthens the arm, or none that needs the arm: common practice.</summary>
    [Fact]
    public void A_hand_that_does_not_get_behind_is_not_sent_there_alone()
    {
        var advice = Cases.Able.Choose("reach-behind", "not-past-the-hip").Choose("reach-front", "not-past-mid-thigh").Advice();

        Assert.DoesNotContain("by-hand", advice.Offered());
        Assert.Equal("seen-not-to-reach", advice.WhyNot("by-hand"));
    }

    [Fact]
    public void Cleaning_by_another_person_comes_after_what_the_person_can_do_alone() =>
        Assert.True(Cases.Able.Advice().Place("helper-wipe").Rank > Cases.Able.Advice().Place("by-hand").Rank);

    /// <summary>Ways of reaching are solved side by side where a core is free; the last is begun first here.</summary>
    [Fact]
    public void Work_that_is_shared_out_gives_the_same_advice()
    {
        int most = 0;
        var shared = Cases.Quick with
        {
            ForAll = (count, work) =>
            {
                most = Math.Max(most, count);
                Parallel.ForEach(Enumerable.Range(0, count).Reverse(), work);
            },
        };
        foreach (var answers in (Answers[])[Cases.Able, Cases.Able.Choose("posture", "standing").Choose("reach-behind", "outer-buttock"), Cases.Able.Choose("hands-free", "one").Choose("reach-front", "groin")])
        {
            Advice alone = new Advisor(Cases.Knowledge, Cases.Quick).Advise(answers), together = new Advisor(Cases.Knowledge, shared).Advise(answers);

            Assert.Equal(alone.Ranked.Select(r => (r.Plan.Key, r.Value, r.FirstShare, r.UsableShare)), together.Ranked.Select(r => (r.Plan.Key, r.Value, r.FirstShare, r.UsableShare)));
            Assert.Equal(alone.Reach!.Needs.Select(n => (n.Posture, n.Approach, n.MiddleLength)), together.Reach!.Needs.Select(n => (n.Posture, n.Approach, n.MiddleLength)));
            Assert.Equal(alone.Reach.Needs.SelectMany(n => n.Draws), together.Reach.Needs.SelectMany(n => n.Draws));
        }

        Assert.Equal(9, most);
    }

    [Fact]
    public void Being_more_able_never_rules_out_what_was_possible() =>
        Gen.Select(Gen.Int[0, Abilities.Length - 1], Gen.Int[0, 3], Gen.Int[0, 1_000_000]).Sample(
            (which, step, other) =>
            {
                var (question, rising) = Abilities[which];
                int worse = step % (rising.Length - 1);
                var person = Somebody(other);

                var before = person.Choose(question, rising[worse]).Advice();
                var after = person.Choose(question, rising[worse + 1]).Advice();

                Assert.Empty(before.Offered().Except(after.Offered(), StringComparer.Ordinal));
            },
            iter: TestRun.Times(100, 15));

    /// <summary>Contributions are those among the people who can use both plans, on whose means they rest.</summary>
    [Fact]
    public void Contributions_are_weight_times_difference()
    {
        var advice = Cases.Able.Choose("reach-behind", "outer-buttock").Choose("reach-front", "groin").Advice();

        Assert.All(advice.Ranked.Where(r => r.ComparedWith is not null), ranked => Assert.All(
            ranked.Reasons, r => Assert.Equal(advice.Weights[(int)r.Criterion] * (r.Value - r.Other), r.Contribution, 12)));
    }

    /// <summary>No lower place is first for more people, and what is left out because it is beaten stands last: places that are told leave no gap.</summary>
    [Theory]
    [InlineData(Depth.Full)]
    [InlineData(Depth.Quick)]
    public void Places_follow_the_shares_of_firsts_and_leave_no_gap(Depth depth)
    {
        var simulator = new Core.Simulation.PeopleSimulator(Cases.Knowledge, App.Files.BuiltIn.People());
        var advisor = new Advisor(Cases.Knowledge, new AdviceSettings { ValueDraws = 16, WeightDraws = 400, ReachesKept = 4096, AsksGrip = false });
        int told = 0;
        for (int i = 0; i < TestRun.Times(400, 60); i++)
        {
            var answers = simulator.Make(31, i, depth, new(2026, 3, 9)).Sessions[0].Answers.Without(QuestionIds.Joints).Without(QuestionIds.Stature).Without(QuestionIds.Mass);
            var ranked = advisor.Advise(answers).Ranked;
            if (ranked.IsEmpty)
            {
                continue;
            }

            var shown = ranked.Where(r => r.BeatenBy is null).ToList();
            told += shown.Count;

            Assert.Equal(ranked.Select(r => r.FirstShare).OrderDescending(), ranked.Select(r => r.FirstShare));
            Assert.Equal(Enumerable.Range(1, shown.Count), shown.Select(r => r.Rank));
            Assert.Equal(ranked[0].Plan, advisor.First(answers));
        }

        Assert.True(told > 100, $"{told} places");
    }

    /// <summary>Nothing is left for the person's hand to do, and that is no fault of the hand.</summary>
    [Fact]
    public void What_another_person_does_is_easy_for_the_hand_and_not_independent()
    {
        var criteria = Cases.Able.Advice().Place("helper-wipe").Criteria;

        Assert.Equal(1, criteria[(int)Criterion.Handling], 12);
        Assert.Equal(0, criteria[(int)Criterion.Independence], 12);
    }

    /// <summary>Whoever puts doing it alone last, and safe and clean skin first, may have a helper first; whoever puts it first does not. An order that does not name
    /// it has it beside handling, of which it was a part.</summary>
    [Fact]
    public void A_helper_is_first_for_whom_doing_it_alone_matters_least()
    {
        var weak = Cases.Able.Choose("reach-behind", "outer-buttock").Choose("reach-front", "not-past-mid-thigh").Choose("dexterity", "slow").Choose("tremor", "some")
            .Choose("fixtures", "no").Choose("socket", "no").Choose("water", "none");

        Assert.Equal("helper-wipe", Order(weak, "skin", "cleaning", "learning", "handling", "contact", "upkeep", "reach", "carrying", "independence").Advice().Offered().First());
        Assert.NotEqual("helper-wipe", Order(weak, "independence", "skin", "cleaning", "learning").Advice().Offered().First());
        Assert.Equal(Priorities.Of(Order(weak, "skin", "handling=independence")).Order, Priorities.Of(Order(weak, "skin", "handling")).Order);
        Assert.NotEqual(Priorities.Of(Order(weak, "independence", "handling")).Order, Priorities.Of(Order(weak, "handling")).Order);
    }

    private static Answers Order(Answers answers, params string[] groups) => answers.With(
        QuestionIds.Priorities, new(new AnswerValue.Order([.. groups.Select(g => System.Collections.Immutable.ImmutableArray.Create(g.Split('=')))]), HowObtained.Reported));

    /// <summary>Who cannot be reached by a plan cannot use it, so that no plan is first for whom it is too short.</summary>
    [Fact]
    public void A_plan_is_usable_for_no_more_people_than_it_is_long_enough_for() => Assert.All(
        Cases.Able.Choose("reach-behind", "outer-buttock").Choose("reach-front", "groin").Advice().Ranked.Where(r => r.Plan.Companion is null),
        r => Assert.True(r.UsableShare <= r.Criteria[(int)Criterion.Reach] + 1e-12, $"{r.Plan.Key}: {r.UsableShare} of {r.Criteria[(int)Criterion.Reach]}"));

    [Fact]
    public void The_value_is_the_weighted_sum_of_the_criteria()
    {
        var advice = Cases.Able.Advice();

        Assert.All(advice.Ranked, r => Assert.Equal(r.Value, r.Criteria.Zip(advice.Weights).Sum(p => p.First * p.Second), 9));
    }

    [Fact]
    public void Shares_of_the_first_place_add_up_to_one()
    {
        var advice = Cases.Able.Advice();

        Assert.Equal(1, advice.Ranked.Sum(r => r.FirstShare), 9);
        Assert.Equal(1, advice.Ranked.Sum(r => r.FirstOfWeightings), 9);
        Assert.All(advice.Ranked, r => Assert.Equal(1, r.RankShares.Sum(), 9));
    }

    [Fact]
    public void A_stated_order_gives_rank_order_centroid_weights()
    {
        // Barron and Barrett 1996, n = 9, from their formula (1/n) times the sum of 1/k from k = i to n, worked out apart to four digits.
        double[] table = [.3143, .2032, .1477, .1106, .0828, .0606, .0421, .0262, .0123];
        string[] order = [.. Words.All<Criterion>().Reverse()];
        var answers = Cases.Able.With(QuestionIds.Priorities, new(new AnswerValue.Order([.. order.Select(c => System.Collections.Immutable.ImmutableArray.Create(c))]), HowObtained.Reported));

        var weights = answers.Advice().Weights.Reverse().ToArray();

        Assert.All(table.Zip(weights), p => Assert.Equal(p.First, p.Second, 4));
    }

    [Fact]
    public void A_rerun_gives_the_same_bits()
    {
        var one = Cases.Able.Advice();
        var two = new Advisor(Cases.Knowledge, Cases.Quick).Advise(Cases.Able);

        Assert.Equal(one.Ranked.Select(r => (r.Plan.Key, r.Value, r.FirstShare)), two.Ranked.Select(r => (r.Plan.Key, r.Value, r.FirstShare)));
    }

    // Reach is kept by person, posture and way, and the way in front apart. Whatever is taken from there must be what would be computed.
    [Fact]
    public void Reach_kept_from_other_answers_is_that_of_these_answers()
    {
        var one = new Advisor(Cases.Knowledge, Cases.Quick);
        foreach (string front in (string[])["not-past-mid-thigh", "groin", "past-the-groin", "groin"])
        {
            foreach (var answers in (Answers[])
            [
                Cases.Able.Choose("reach-front", front),
                Cases.Able.Choose("reach-front", front).Choose("posture", "standing"),
                Cases.Able.Choose("reach-front", front).Choose("hand", "left"),
                Cases.Able.Choose("reach-front", front).Choose("reach-behind", "outer-buttock"),
                Cases.Able.Choose("reach-front", front).Mark("precautions", "sternal"),
            ])
            {
                var kept = one.Advise(answers).Reach!.Needs;
                var anew = answers.Advice().Reach!.Needs;
                Assert.Equal(anew.Select(n => (n.Posture, n.Approach, n.MiddleLength)), kept.Select(n => (n.Posture, n.Approach, n.MiddleLength)));
                Assert.All(anew.Zip(kept), n => Assert.Equal(n.First.Draws, n.Second.Draws));
            }
        }
    }

    /// <summary>A person with a few answers made worse, the same for the same number.</summary>
    private static Answers Somebody(int number)
    {
        var person = Cases.Able.Choose("reach-front", "groin");
        foreach (var (question, rising) in Abilities)
        {
            person = person.Choose(question, rising[number % rising.Length]);
            number /= rising.Length;
        }

        return person.Choose("helper", number % 2 == 0 ? "never" : "always");
    }
}
