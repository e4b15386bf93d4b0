using System.Collections.Immutable;
using ToiletAid.App.Articles;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>Advice in parts: the brief result, then what stands behind it.</summary>
/// <param name="knowledge">Questions and rules.</param>
/// <param name="advisor">Where advice comes from.</param>
/// <param name="planner">What is worth asking.</param>
/// <param name="top">How many plans to give.</param>
internal sealed class AdviceParts(KnowledgeBase knowledge, Advisor advisor, QuestionPlanner planner, int top)
{
    private readonly AdviceText _text = new(knowledge);

    /// <summary>The result of a visit.</summary>
    internal ResultParts Of(Session session)
    {
        var advice = advisor.Advise(session.Answers);
        string place = !advice.Stops.IsEmpty ? "Stop" : advice.Ranked.IsEmpty ? "Nothing to offer" : PlaceOf(advice.Ranked[0].Plan.Aid.Name);
        return new([.. _text.Brief(advice, session.Answers)], place, new LevelText(knowledge).Of(advice, session.Answers, top));
    }

    /// <summary>Why no more is asked, one sentence.</summary>
    internal string Ended(Visit visit) => visit.Engine.IsEndedEarly ? "The questions were ended early." : ExplainText.End(planner.OutlookFor(visit.Depth, visit.Engine.Answers));

    /// <summary>The first place in so few characters that it stands whole on 40 cells of braille.</summary>
    internal static string PlaceOf(string name)
    {
        const string first = "First: ";
        const int most = 38;
        string[] words = PlanText.Lower(name).Split(' ');
        int take = words.Length;
        while (take > 1 && (first.Length + string.Join(' ', words[..take]).Length > most || words[take - 1] is "with" or "by" or "for" or "the" or "at"))
        {
            take--;
        }

        return first + string.Join(' ', words[..take]);
    }

    /// <summary>Why a kind of aid has its place, and what would put it first.</summary>
    internal ImmutableArray<string> Why(Session session, string aid)
    {
        var advice = advisor.Advise(session.Answers);
        var text = new ExplainText(knowledge);
        bool isFirst = aid == advice.Ranked.FirstOrDefault()?.Plan.Aid.KindId;
        return
        [
            .. advice.Stops.IsEmpty ? text.Why(advice, aid) : advice.Stops.Select(AdviceText.Sentence),
            .. isFirst || !advice.Stops.IsEmpty ? [] : text.WhyNot(new Explainer(knowledge, advisor).WhyNot(session.Answers, aid)),
        ];
    }

    /// <summary>What an article must be like, for the first plan of which something is bought.</summary>
    internal ImmutableArray<string> LookFor(Session session)
    {
        var advice = advisor.Advise(session.Answers);
        if (!advice.Stops.IsEmpty)
        {
            return [.. advice.Stops.Select(AdviceText.Sentence)];
        }

        var ranked = LookForText.Usual(advice);
        var demand = ranked is null ? null : new ArticleSearch(knowledge, advisor).Of(session.Answers, ranked.Plan, ranked.Rank == 1);
        return [.. new LookForText(knowledge).Told(advice, ranked, demand)];
    }

    /// <summary>Asks whether an article is right; null where a red flag stops everything.</summary>
    internal ArticleInterview? Article(Session session)
    {
        var advice = advisor.Advise(session.Answers);
        return advice.Stops.IsEmpty ? new(knowledge, advisor, session.Answers, advice) : null;
    }

    /// <summary>What is to be said of an article at the end of the questions.</summary>
    internal ImmutableArray<string> Verdict(ArticleInterview interview) => [.. new FitsText(knowledge).Lines(interview.Result()!)];

    /// <summary>What would change the first place.</summary>
    internal ImmutableArray<string> Counterfactuals(Session session)
    {
        var advice = advisor.Advise(session.Answers);
        return advice.Ranked.IsEmpty
            ? ["No plan is in first place."]
            : [.. new ExplainText(knowledge).Counterfactuals(new Explainer(knowledge, advisor).Counterfactuals(session.Answers)), .. ExplainText.Besides(planner.OutlookFor(session.Depth, session.Answers), advice)];
    }
}
