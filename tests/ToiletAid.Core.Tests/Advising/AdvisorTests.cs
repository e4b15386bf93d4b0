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

    [Fact]
    public void Contributions_add_up_to_the_lead()
    {
        foreach (var ranked in Cases.Able.Choose("reach-behind", "outer-buttock").Choose("reach-front", "groin").Advice().Ranked.SkipLast(1))
        {
            var advice = ranked;
            Assert.True(advice.Reasons.Sum(r => r.Contribution) >= -1e-12);
        }
    }

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
        // Barron and Barrett 1996, n = 8, to the printed digits: evidence table, typed in.
        double[] table = [.3397, .2147, .1522, .1106, .0793, .0543, .0335, .0156];
        string[] order = [.. Words.All<Criterion>().Reverse()];
        var answers = Cases.Able.With("priorities", new(new AnswerValue.Order([.. order.Select(c => System.Collections.Immutable.ImmutableArray.Create(c))]), HowObtained.Reported));

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
