using System.Collections.Immutable;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Screens;

/// <summary>Advice in parts: the whole first, in the words of the linear mode, then what a therapist looks up again.</summary>
/// <param name="knowledge">Questions and rules.</param>
/// <param name="advisor">Where advice comes from.</param>
/// <param name="top">How many plans to give.</param>
internal sealed class AdviceParts(KnowledgeBase knowledge, Advisor advisor, int top)
{
    private readonly AdviceText _text = new(knowledge);

    /// <summary>The result of a visit.</summary>
    internal ImmutableArray<ResultPart> Of(Session session)
    {
        var advice = advisor.Advise(session.Answers);
        var shown = advice.Ranked.Where(p => p.BeatenBy is null).Take(top).ToList();
        var parts = ImmutableArray.CreateBuilder<ResultPart>();
        parts.Add(new("Result", [.. _text.Lines(advice, session.Answers, top)]));
        Add(parts, "Reasons", shown.SelectMany(p => Tried(p).Concat(AdviceText.Reasons(p)).Prepend(Heading(p))));
        Add(parts, "Cautions", shown.Where(p => !p.Cautions.IsEmpty).SelectMany(p => p.Cautions.Select(AdviceText.Sentence).Prepend(Heading(p))));
        Add(parts, "Set-up", shown.SelectMany(p => new SetupText(p, session.Answers, knowledge).Steps().Select((step, i) => $"{i + 1}. {step}").Prepend(Heading(p))));
        Add(parts, "Ruled out", advice.RuledOut.Select(a => $"{a.Aid.Name}. {AdviceText.Sentence(a.Reasons[0])}"));
        return parts.ToImmutable();
    }

    /// <summary>Why a kind of aid has its place, and what would put it first.</summary>
    internal ImmutableArray<string> Why(Session session, string aid)
    {
        var advice = advisor.Advise(session.Answers);
        var text = new ExplainText(knowledge);
        bool isFirst = aid == advice.Ranked.FirstOrDefault()?.Plan.Aid.Id;
        return
        [
            .. advice.Stops.IsEmpty ? text.Why(advice, aid) : advice.Stops.Select(AdviceText.Sentence),
            .. isFirst || !advice.Stops.IsEmpty ? [] : text.WhyNot(new Explainer(knowledge, advisor).WhyNot(session.Answers, aid)),
        ];
    }

    /// <summary>What would change the first place.</summary>
    internal ImmutableArray<string> Counterfactuals(Session session) => advisor.Advise(session.Answers).Ranked.IsEmpty
        ? ["No plan is in first place."]
        : [.. new ExplainText(knowledge).Counterfactuals(new Explainer(knowledge, advisor).Counterfactuals(session.Answers))];

    /// <summary>What was tried of the plan, where anything was.</summary>
    private IEnumerable<string> Tried(RankedPlan plan) => plan.Tried.SelectMany(new TrialText(knowledge).Lines);

    private static string Heading(RankedPlan plan) => $"Place {plan.Rank}. {PlanText.Name(plan.Plan)}.";

    private static void Add(ImmutableArray<ResultPart>.Builder parts, string title, IEnumerable<string> lines)
    {
        if (lines.ToImmutableArray() is { IsEmpty: false } some)
        {
            parts.Add(new(title, some));
        }
    }
}
