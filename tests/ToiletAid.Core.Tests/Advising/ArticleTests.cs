using ToiletAid.App.Store;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Advising;

/// <summary>Articles of a clinic count as one with their kind: however many of one kind lie in the cupboard, no share is split among them.</summary>
public sealed class ArticleTests
{
    private static readonly AdviceSettings Settings = new() { AsksGrip = false, WeightDraws = 2000 };
    private static readonly string[] People = ["k-014-stiff-shoulder", "r-033-cord-injury", "s-275-breastbone", "t-562-weak-grip"];

    private static Aid Kind(string id) => Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == id);

    private static Aid Article(string kind, string id, double metres = 0) => Kind(kind) with
    {
        Id = id,
        ArticleOf = kind,
        Name = $"{Kind(kind).Name}, article {id}",
        Variants = [],
        Length = metres == 0 ? Kind(kind).Length : new(metres, metres, metres, Basis.Measured, "Ruler."),
    };

    private static KnowledgeBase With(params Aid[] articles) => Cases.Knowledge with { Catalogue = Cases.Knowledge.Catalogue.Under(new([.. articles], [])) };

    private static Answers Answers(string name) => new ProfileFile(Cases.Knowledge.Questions).Read(DemoPeople.File(name), null).Value!.Latest.Answers;

    private static Advice Advise(KnowledgeBase knowledge, Answers known) => new Advisor(knowledge, Settings).Advise(known);

    [Fact]
    public void Three_articles_of_a_kind_have_the_shares_of_one()
    {
        int named = 0;
        foreach (var known in People.Select(Answers))
        {
            foreach (string kind in (string[])["long-clamp", "short-soft", "paddle-lock", "spray-wash"])
            {
                Advice one = Advise(With(Article(kind, "a-1")), known), three = Advise(With(Article(kind, "a-1"), Article(kind, "a-2"), Article(kind, "a-3")), known);

                Assert.Equal(one.Ranked.Select(r => (r.Plan.Aid.KindId, r.FirstShare)), three.Ranked.Select(r => (r.Plan.Aid.KindId, r.FirstShare)));
                Assert.Equal(three.Ranked.Length, three.Ranked.Select(r => r.Plan.Aid.KindId).Distinct().Count());
                if (three.Ranked.FirstOrDefault(r => r.Plan.Aid.ArticleOf == kind) is { } ranked)
                {
                    named++;
                    Assert.Equal(2, ranked.AlsoFits.Length);
                }
            }
        }

        Assert.InRange(named, 4, 16);
    }

    /// <summary>What is at hand is taken unless another one is better by what an add-on must earn.</summary>
    [Fact]
    public void The_best_article_is_named_and_the_kind_only_where_it_is_better_by_what_must_be_earned()
    {
        var known = Answers("k-014-stiff-shoulder");
        Aid longer = Article("short-soft", "longer", 0.23), same = Article("short-soft", "same"), shorter = Article("short-soft", "shorter", 0.16);

        var best = Advise(With(shorter, longer), known).Ranked.Single(r => r.Plan.Aid.KindId == "short-soft");
        Assert.Equal("longer", best.Plan.Aid.Id);
        Assert.Equal("same", Advise(With(same), known).Ranked.Single(r => r.Plan.Aid.KindId == "short-soft").Plan.Aid.Id);

        var alone = Advise(With(shorter), known);
        Assert.Equal("short-soft", alone.Ranked.Single(r => r.Plan.Aid.KindId == "short-soft").Plan.Aid.Id);
        Assert.Equal("too-short", alone.RuledOut.Single(r => r.Aid.Id == "shorter").Reasons[0].Rule.Id);
    }

    [Fact]
    public void An_article_can_be_possible_where_its_kind_is_not()
    {
        var known = Answers("k-014-stiff-shoulder");
        var tooShort = Kind("short-soft") with { Length = new(0.12, 0.12, 0.12, Basis.Measured, "Ruler."), Variants = [] };
        var knowledge = Cases.Knowledge with { Catalogue = Cases.Knowledge.Catalogue.Under(new([tooShort, Article("short-soft", "longer", 0.23)], [])) };
        var advice = Advise(knowledge, known);

        Assert.Equal("longer", advice.Ranked.Single(r => r.Plan.Aid.KindId == "short-soft").Plan.Aid.Id);
        Assert.DoesNotContain(advice.RuledOut, r => r.Aid.KindId == "short-soft");
    }

    [Fact]
    public void What_is_asked_next_counts_articles_with_their_kind()
    {
        var known = Answers("k-014-stiff-shoulder").Without(QuestionIds.Joints).Without(QuestionIds.Grip).Without(QuestionIds.Tremor).Without(QuestionIds.Skin).Without(QuestionIds.Feeling);
        Outlook usual = Plan(Cases.Knowledge, known);
        string first = usual.First!.Id;
        Outlook stocked = Plan(With(Article(first, "a-1", 0.19), Article(first, "a-2", 0.22), Article(first, "a-3", 0.25), Article("long-clamp", "a-4")), known);

        // The longer ones get further, which is to the good of their kind and makes no kinds of their own.
        Assert.All(stocked.Tier, a => Assert.Null(a.ArticleOf));
        Assert.Equal(first, stocked.First?.Id);
        Assert.InRange(stocked.RawShare, usual.RawShare + 0.02, 1);
    }

    [Fact]
    public void Why_not_is_answered_for_an_article_as_for_its_kind()
    {
        var known = Answers("k-014-stiff-shoulder");
        var knowledge = With(Article("short-soft", "a-1"), Article("short-soft", "a-2"), Article("tongs", "a-3"));

        Assert.True(new Explainer(knowledge, new Advisor(knowledge, Settings)).WhyNot(known, "a-2").IsFirst);
        Assert.Equal("tongs", new Explainer(knowledge, new Advisor(knowledge, Settings)).WhyNot(known, "a-3").Aid);

        // An article that is ruled out is told with its reason, also where its kind is possible.
        var shorter = With(Article("short-soft", "shorter", 0.16));
        Assert.Contains(new Advisor(shorter, Settings).Advise(known).RuledOut, r => r.Aid.Id == "shorter" && r.Reasons[0].Rule.Id == "too-short");
    }

    private static Outlook Plan(KnowledgeBase knowledge, Answers known) => new QuestionPlanner(knowledge).OutlookFor(Depth.Full, known, judgeEarly: true);
}
