using System.Collections.Immutable;
using CsCheck;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Comparing;

/// <summary>The laws that Shapley (1953) shares obey (from memory), on the shares that a comparison gives.</summary>
public sealed class LeadShareTests
{
    private const double Rounding = 1e-12;

    private static readonly DateOnly Day = new(2026, 3, 9);

    /// <summary>Answers that change the value of many plans; none of them changes the reach, which would take long.</summary>
    private static readonly ImmutableArray<(string Question, string Option)> Changes =
    [
        ("grasp", "press-with-palm-or-fist"), ("feeling", "reduced"), ("skin", "fragile"), ("stool", "6"), ("deep", "yes"),
        ("steps", "two-or-three"), ("sight", "low"), ("helper", "never"), ("water", "none"), ("tremor", "marked"),
    ];

    [Fact]
    public void Shares_add_up_to_the_change_of_the_lead() =>
        Gen.Int[1, (1 << Changes.Length) - 1].Where(set => int.PopCount(set) <= 5).Sample(
            set =>
            {
                var lead = Compare(Cases.Knowledge, Cases.Able, Changed(set)).Lead!;

                Assert.Equal(int.PopCount(set), lead.Movers.Length);
                Assert.Equal(lead.After - lead.Before, lead.Movers.Sum(m => m.Share), Rounding);
            },
            iter: 6);

    [Fact]
    public void The_lead_is_that_of_the_advice()
    {
        var comparison = Compare(Cases.Knowledge, Cases.Able, Changed(0b11));
        var lead = comparison.Lead!;

        Assert.Equal(Value(comparison.After, lead.One.Id) - Value(comparison.After, lead.Other.Id), lead.After, Rounding);
        Assert.Equal(Value(comparison.Before, lead.One.Id) - Value(comparison.Before, lead.Other.Id), lead.Before, Rounding);
    }

    /// <summary>A budget that everything stays within, and how a red flag was asked for, change no value.</summary>
    [Fact]
    public void An_answer_that_changes_nothing_has_no_share()
    {
        var from = Cases.Able.Choose("budget", 50_000, "money");
        var to = Changed(0b101).Choose("budget", 60_000, "money").With(QuestionIds.RedFlags, new(new AnswerValue.Many([]), HowObtained.Observed));

        var lead = Compare(Cases.Knowledge, from, to).Lead!;

        Assert.Equal(4, lead.Movers.Length);
        Assert.All(lead.Movers.Where(m => m.Questions[0].Text is "budget" or "red-flags"), m => Assert.Equal(0.0, m.Share));
        Assert.Contains(lead.Movers, m => m.Share != 0);
    }

    /// <summary>With the same coefficient bleeding and soreness do the same to every plan, so they have the same share.</summary>
    [Fact]
    public void Answers_that_do_the_same_have_the_same_share()
    {
        var evidence = Cases.Knowledge.Evidence;
        var alike = Cases.Knowledge with
        {
            Evidence = new EvidenceTable(evidence.Ids.Select(id => KeyValuePair.Create(id.Text, id == EvidenceIds.SkinSore ? evidence[EvidenceIds.SkinBleeding] : evidence[id]))),
        };

        // Drawn each from its own place in the range, the two numbers would not be alike.
        var advisor = new Advisor(alike, Cases.Quick with { DrawsNumbers = false });
        var lead = Compare(alike, advisor, Cases.Able, Changed(0b1).Choose("bleeding", "yes").Choose("sore-when-wiped", "yes")).Lead!;
        double bleeding = Share(lead, "bleeding"), sore = Share(lead, "sore-when-wiped");

        Assert.NotEqual(0, bleeding);
        Assert.Equal(bleeding, sore, Rounding);
    }

    [Fact]
    public void The_way_back_has_the_opposite_shares()
    {
        var advisor = new Advisor(Cases.Knowledge, Cases.Quick);
        Answers able = Cases.Able, changed = Changed(0b1101);
        ImmutableArray<QuestionId> questions = [.. Changes.Where((_, i) => (0b1101 >> i & 1) != 0).Select(c => new QuestionId(c.Question))];
        var (one, other) = (Cases.Knowledge.Catalogue.Aids[0], Cases.Knowledge.Catalogue.Aids[1]);

        var there = LeadShares.Of(Cases.Knowledge, advisor, able, changed, questions, one, other);
        var back = LeadShares.Of(Cases.Knowledge, advisor, changed, able, questions, one, other);

        Assert.All(there.Movers, m => Assert.Equal(-m.Share, Share(back, m.Questions[0]), Rounding));
    }

    [Fact]
    public void More_than_ten_changes_are_taken_together_by_topic_and_add_up_too()
    {
        var to = Changed((1 << Changes.Length) - 1).Choose("bleeding", "yes");

        var lead = Compare(Cases.Knowledge, Cases.Able, to).Lead!;

        Assert.False(lead.IsSampled);
        Assert.All(lead.Movers, m => Assert.NotNull(m.Topic));
        Assert.Equal(11, lead.Movers.Sum(m => m.Questions.Length));
        Assert.Equal(lead.After - lead.Before, lead.Movers.Sum(m => m.Share), Rounding);
    }

    [Fact]
    public void Without_a_ranking_there_is_no_lead()
    {
        var comparison = Compare(Cases.Knowledge, Cases.Able, Changed(0b1).Mark("red-flags", "new-severe-pain"));

        Assert.Null(comparison.Lead);
        Assert.Empty(comparison.Places);
        Assert.Null(comparison.FirstIfOnlyReal);
    }

    [Fact]
    public void Only_real_changes_leave_a_first_place_that_measuring_error_moved()
    {
        // One option worse is within what looking may be wrong by, so with only real changes everything is as before.
        var comparison = Compare(Cases.Knowledge, Cases.Able.Choose("reach-behind", "tailbone"), Cases.Able.Choose("reach-behind", "the-cleft"));

        Assert.Equal(Verdict.WithinError, Assert.Single(comparison.Differences).Verdict);
        Assert.Equal(comparison.Before.Ranked[0].Plan.Key, comparison.FirstIfOnlyReal!.Key);
    }

    private static Answers Changed(int set) => Changes.Where((_, i) => (set >> i & 1) != 0).Aggregate(Cases.Able, (a, c) => a.Choose(c.Question, c.Option));

    private static double Value(Advice advice, string aid) => advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == aid)?.Value ?? 0;

    private static double Share(LeadChange lead, string question) => lead.Movers.Single(m => m.Questions[0] == question).Share;

    private static Comparison Compare(KnowledgeBase knowledge, Answers from, Answers to) => Compare(knowledge, new(knowledge, Cases.Quick), from, to);

    private static Comparison Compare(KnowledgeBase knowledge, Advisor advisor, Answers from, Answers to) =>
        new VisitComparer(knowledge, advisor).Compare(new(1, Day, from), new(2, Day.AddDays(60), to), null);
}
