using Humanizer;
using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>Why, why not, what would change it and what to ask next, as lines to be read aloud.</summary>
/// <param name="knowledge">Questions and kinds of aid.</param>
public sealed class ExplainText(KnowledgeBase knowledge)
{
    /// <summary>Why a kind of aid has its place, with what speaks against it and what was tried of it; nothing where a red flag stopped the ranking.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="aid">Id of the kind.</param>
    public IEnumerable<string> Why(Advice advice, string aid)
    {
        if (advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == aid) is { } ranked)
        {
            yield return $"Place {ranked.Rank} of {advice.Ranked.Length}. {PlanText.Name(ranked.Plan)}.";
            yield return AdviceText.HowSure(ranked);
            foreach (string line in AdviceText.Reasons(ranked))
            {
                yield return line;
            }

            if (ranked.BeatenBy is { } better)
            {
                yield return $"Whatever the priorities, {PlanText.The(better)} is better.";
            }

            foreach (string line in ranked.Tried.SelectMany(new TrialText(knowledge).Lines))
            {
                yield return line;
            }

            yield break;
        }

        if (advice.Ranked.FirstOrDefault(r => r.Plan.Aid.KindId == knowledge.Catalogue.KindOf(aid)) is { } other && !advice.RuledOut.Any(r => r.Aid.Id == aid))
        {
            yield return $"Another of its kind stands for it, in place {other.Rank} of {advice.Ranked.Length}: {PlanText.Lower(other.Plan.Aid.Name)}.";
        }

        foreach (var ruledOut in advice.RuledOut.Where(r => r.Aid.Id == aid))
        {
            yield return $"{ruledOut.Aid.Name} is ruled out.";
            foreach (var reason in ruledOut.Reasons)
            {
                yield return AdviceText.Sentence(reason);
            }
        }
    }

    /// <summary>What would put a method first.</summary>
    public IEnumerable<string> WhyNot(WhyNot found)
    {
        string the = The(found.Aid);
        if (found.IsFirst)
        {
            return [$"{Spoken.Capital(the)} is first."];
        }

        if (found.Changes.IsEmpty)
        {
            return [$"No single change, and no pair of changes tried, would put {the} first. {found.Tried} were tried."];
        }

        return
        [
            found.Changes.Length == 1 ? $"One other answer would put {the} first." : $"Two other answers together would put {the} first.",
            .. found.Changes.Select(Change),
        ];
    }

    /// <summary>Answers that would change the first place if they were a little wrong.</summary>
    public IEnumerable<string> Counterfactuals(IReadOnlyCollection<Counterfactual> counterfactuals) => counterfactuals.Count == 0
        ? ["First place stays the same if any one answer is off by one step or one measuring error."]
        :
        [
            $"{Spoken.Capital("answer".ToQuantity(counterfactuals.Count, ShowQuantityAs.Words))} would change the first place if {(counterfactuals.Count == 1 ? "it were" : "they were")} slightly different.",
            .. counterfactuals.Select(f => $"{Change(f.Change)} Then {The(f.First)} would be first."),
        ];

    /// <summary>What to ask next, what each open question may bring, and what else may come first.</summary>
    public static IEnumerable<string> Next(Outlook outlook, Advice advice)
    {
        IEnumerable<string> next = outlook.Next.IsEmpty
            ? [End(outlook)]
            : [
                MoreQuestions(outlook.Next.Length),
                $"Next: {outlook.Next[0].Prompt}",
                .. outlook.Next.Length > 1 ? [$"After that: {outlook.Next.Skip(1).Select(q => q.Name).Humanize("and")}."] : (string[])[],
            ];
        return [.. next, .. Besides(outlook, advice), .. outlook.Values.Where(v => v.Gain > 0 || v.ChangeShare > 0 || v.MustBeAsked).Select(Bring)];
    }

    /// <summary>Why nothing more is asked, one sentence.</summary>
    public static string End(Outlook outlook) => outlook.Enough switch
    {
        Enough.LittleLeft => "More answers would hardly change the advice.",
        Enough.Budget => $"That is all this depth asks.{(outlook.Deciding is { } open ? $" One more question would help: {open.Name}." : string.Empty)}",
        Enough.RedFlag => "A sign that needs a doctor ends the questions.",
        _ => "Every question at this depth has been asked.",
    };

    /// <summary>Which other kinds are about as good, and what would decide between them. How sure the first place is stands in the advice and is said there alone.</summary>
    /// <param name="outlook">What more answers may bring.</param>
    /// <param name="advice">The advice on the same answers.</param>
    public static IEnumerable<string> Besides(Outlook outlook, Advice advice)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        ArgumentNullException.ThrowIfNull(advice);
        if (advice.Ranked.FirstOrDefault() is not { } first || outlook.First is null)
        {
            yield break;
        }

        string[] others = [.. outlook.Offered(advice).Where(a => a.KindId != first.Plan.Aid.KindId).Select(a => PlanText.Lower(a.Name))];
        if (others.Length > 0 && advice.Held < BriefText.FairlySure)
        {
            yield return $"About as good on these answers: {others.Humanize("and")}.";
        }

        if (outlook.Deciding is { } question)
        {
            yield return $"What would decide it: {question.Name}.";
        }
    }

    /// <summary>How many questions are still worth asking.</summary>
    public static string MoreQuestions(int count) =>
        $"{Spoken.Capital("more question".ToQuantity(count, ShowQuantityAs.Words))} could change the result.";

    private static string Bring(QuestionValue value)
    {
        string changes = value.ChangeShare > 0 ? $" For {SlotText.OfHundred(value.ChangeShare)} of 100 people like this the answer would put another kind first." : string.Empty;
        string must = !value.MustBeAsked ? string.Empty
            : value.Question.Id == QuestionIds.Place.Text || value.Question.Id == QuestionIds.Posture.Text ? " Without it the first plan may be in a position that is not the person's."
            : value.Question.Id == QuestionIds.Mass.Text ? " Without it the first plan may not suit a person of this size."
            : " Without it one rule about the first plan cannot be applied.";
        return $"{value.Question.Prompt}{changes}{must}";
    }

    private static string Change(AnswerChange change)
    {
        string to = AnswerWording.Of(change.Question, change.To);
        return change.From is null or AnswerValue.NotKnown
            ? $"{Spoken.Capital(change.Question.Name)}, not known now. If it is: {to}."
            : $"{Spoken.Capital(change.Question.Name)}. Now: {AnswerWording.Of(change.Question, change.From)}. If it were: {to}.";
    }

    private string The(string aid) => PlanText.The(knowledge.Catalogue.Aids.First(a => a.Id == aid));
}
