using Humanizer;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>Advice as lines to be read aloud: one idea a sentence, no tables, no symbols.</summary>
/// <param name="knowledge">Questions and rules.</param>
public sealed class AdviceText(KnowledgeBase knowledge)
{
    private const int MostReasons = 3;

    private readonly BriefText _brief = new(knowledge);

    /// <summary>What stands under every piece of advice.</summary>
    public static readonly string Limits =
        "This supports trained staff and is not a diagnosis. The therapist decides. Local policy, building, electrical and plumbing codes and licensed trades come first.";

    /// <summary>What counts while the person's own order of priorities is not known.</summary>
    public static readonly string NoPriorities =
        "No priorities were stated, so skin, reach, handling, cleaning and independence count most, then contact and learning, then carrying and upkeep.";

    /// <summary>The whole advice.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="known">The answers it rests on.</param>
    /// <param name="top">How many plans to give.</param>
    public IEnumerable<string> Lines(Advice advice, Answers known, int top)
    {
        if (!advice.Stops.IsEmpty)
        {
            return Stop(advice.Stops);
        }

        return
        [
            .. Brief(advice, known),
            .. advice.Ranked.IsEmpty ? [] : (string[])[NeedText.Sentence(advice)],
            .. Common(advice),
            .. advice.Ranked.IsEmpty ? NeedText.Arrange(advice) : Shortlist(advice, known, top),
            .. RuledOut(advice),
            .. Conflicts(advice, knowledge),
            Limits,
        ];
    }

    /// <summary>The result in the first breath.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="known">The answers it rests on.</param>
    public IEnumerable<string> Brief(Advice advice, Answers known)
    {
        ArgumentNullException.ThrowIfNull(advice);
        var brief = _brief.Of(advice, known).Select(p => p.Sentence);
        return advice.Stops.IsEmpty ? brief.Concat(ClinicText.Used(knowledge)) : brief;
    }

    /// <summary>Why a method is not offered, as a sentence or several.</summary>
    public static string Sentence(Finding finding) => SlotText.Fill(finding.Rule.Text, finding.Slots);

    /// <summary>Why a plan stands where it stands, one sentence for each reason.</summary>
    public static IEnumerable<string> Reasons(RankedPlan plan)
    {
        if (plan.ComparedWith is not { } other)
        {
            yield return "No other plan can be offered.";
            yield break;
        }

        bool leads = plan.Reasons.Sum(r => r.Contribution) >= 0;
        var differ = plan.Reasons.Where(r => SlotText.OfHundred(r.Value) != SlotText.OfHundred(r.Other));
        var telling = leads
            ? differ.Where(r => r.Contribution > 0.0005).Take(MostReasons)
            : differ.Where(r => r.Contribution < -0.0005).Reverse().Take(MostReasons);
        string usable = SlotText.OfHundred(plan.UsableShare), otherUsable = SlotText.OfHundred(plan.OtherUsableShare);
        bool any = usable != "100" || otherUsable != "100";
        if (any)
        {
            yield return $"It is usable for {usable} of 100 people like this, and {PlanText.The(other)} for {otherUsable}.";
        }

        if (!leads && plan.IsAhead)
        {
            any = true;
            yield return $"Among those who can use both, it scores lower than {PlanText.The(other)} on average, yet it comes first for more people.";
        }

        foreach (var r in telling)
        {
            any = true;
            yield return $"{PlanText.Of(r.Criterion)}: {SlotText.OfHundred(r.Value)} of 100, {(leads ? "against" : "behind")} {SlotText.OfHundred(r.Other)} for {PlanText.The(other)}. 100 means {PlanText.Best(r.Criterion)}.";
        }

        if (!any)
        {
            yield return $"It is as good as {PlanText.The(other)} on every criterion.";
        }
    }

    /// <summary>How sure the place is, in words.</summary>
    public static string HowSure(RankedPlan plan) =>
        $"First in {SlotText.OfHundred(plan.FirstShare)} of 100 draws of people with these answers, reasonable priorities and plausible estimates.";

    /// <summary>The same; nothing is called sure while nobody knows whether there is a red flag.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="advice">The advice that it is part of.</param>
    public static string HowSure(RankedPlan plan, Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return !advice.SignsKnown ? "Nothing is certain until the warning signs have been asked about."
            : plan.Rank > 1 ? HowSure(plan)
            : $"{HowSure(plan)} In simulated visits, {SlotText.OfHundred(advice.Held)} of 100 such first places held once everything was asked.";
    }

    /// <summary>Where what was seen and what was measured do not go together.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="knowledge">The questions.</param>
    public static IEnumerable<string> Conflicts(Advice advice, KnowledgeBase knowledge) => (advice.Reach?.Contradictions ?? []).Select(c =>
        $"The answer on {knowledge.Questions[c.Question].Name} is {(c.AnswerIsTooGood ? "better" : "worse")} than the measured joints allow. The ranking goes by what was seen. Ask or measure again.");

    /// <summary>What is said where a red flag stops the ranking: that, what to do, and the limits of it.</summary>
    /// <param name="stops">The red flags, one or more.</param>
    public static IEnumerable<string> Stop(IEnumerable<Finding> stops)
    {
        ArgumentNullException.ThrowIfNull(stops);
        yield return "Stop. No aid is recommended today.";
        foreach (var stop in stops)
        {
            yield return Sentence(stop);
        }

        yield return Limits;
    }

    private IEnumerable<string> Shortlist(Advice advice, Answers known, int top)
    {
        var first = advice.Ranked[0];
        var said = advice.ForEveryPlan.Select(Sentence).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. advice.PrioritiesStated ? [] : (string[])[NoPriorities],
            .. Place(first, advice, said, SetUp(first, known), known),
            .. Others(advice, known, top),
        ];
    }

    /// <summary>Why the first plan is first, with the numbers.</summary>
    internal IEnumerable<string> ReasonsOf(Advice advice, RankedPlan first) =>
        [NeedText.Sentence(advice), .. advice.PrioritiesStated ? [] : (string[])[NoPriorities], .. Assessed(first, advice)];

    /// <summary>Every caution of the first plan, and those that hold for any.</summary>
    internal static IEnumerable<string> CautionsOf(Advice advice, RankedPlan? first) =>
        Common(advice).Concat(first?.Cautions.Select(Caution) ?? []).Distinct(StringComparer.Ordinal);

    /// <summary>The plans after the first.</summary>
    internal IEnumerable<string> Others(Advice advice, Answers known, int top)
    {
        var shown = advice.Ranked.Where(p => p.BeatenBy is null).Take(top).ToList();
        var said = advice.ForEveryPlan.Concat(shown.Take(1).SelectMany(p => p.Cautions)).Select(Sentence).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. shown.Skip(1).SelectMany(plan => Place(plan, advice, said, HoldsToo(plan, shown[0], advice), known)),
            .. AlsoPossible([.. advice.Ranked.Except(shown)]),
        ];
    }

    /// <summary>One plan of the shortlist. A caution that was said is not said again.</summary>
    private IEnumerable<string> Place(RankedPlan plan, Advice advice, HashSet<string> said, IEnumerable<string> afterCautions, Answers known) =>
    [
        $"Place {plan.Rank}. {PlanText.Name(plan.Plan)}.",
        .. Assessed(plan, advice),
        .. plan.Cautions.Where(c => said.Add(Sentence(c))).Select(Caution),
        .. afterCautions,
        .. StillToAsk(plan, known),
    ];

    /// <summary>Questions whose answers a rule about the plan waits for, as one sentence; nothing where there is none.</summary>
    internal IEnumerable<string> StillToAsk(RankedPlan plan, Answers known) => Unsettled(plan, known) is { Length: > 0 } ask ? [$"Still to ask: {ask}."] : [];

    /// <summary>How sure the place is, what was tried, the reasons and what is asked of reach and hand.</summary>
    private IEnumerable<string> Assessed(RankedPlan plan, Advice advice) =>
    [
        HowSure(plan, advice),
        .. OnlySo(plan),
        .. plan.AlsoFits.IsEmpty ? [] : (string[])[$"Also in stock and possible: {plan.AlsoFits.Select(a => PlanText.Lower(a.Name)).Humanize("and")}."],
        .. plan.Tried.SelectMany(t => new TrialText(knowledge).Lines(t)),
        .. Reasons(plan),
        .. Demands(plan),
        .. plan.Rank == 1 && advice.Grip is { } grip ? GripText.Lines(grip, plan) : [],
    ];

    /// <summary>Of a kind that is possible in one variant only: so, and what would rule it out otherwise.</summary>
    internal static IEnumerable<string> OnlySo(RankedPlan plan) =>
        plan.Plan.Variant is { } variant && !plan.Otherwise.IsEmpty ? [$"Only {variant.Has}. Otherwise: {BriefText.FirstSentence(plan.Otherwise[0])}"] : [];

    private static IEnumerable<string> HoldsToo(RankedPlan plan, RankedPlan first, Advice advice) =>
        Again(plan, first, advice) is { Length: > 0 } again ? [$"Cautions for place {first.Rank} that also apply here: {again}."] : [];

    /// <summary>What else can be offered; what is never better than the same plan is told together.</summary>
    private static IEnumerable<string> AlsoPossible(IReadOnlyCollection<RankedPlan> rest)
    {
        if (rest.Where(p => p.BeatenBy is null).Select(p => $"{PlanText.Method(p.Plan)}, place {p.Rank}").ToList() is { Count: > 0 } open)
        {
            yield return $"Also possible: {string.Join("; ", open)}.";
        }

        foreach (var beaten in rest.Where(p => p.BeatenBy is not null).GroupBy(p => PlanText.The(p.BeatenBy!), StringComparer.Ordinal))
        {
            yield return $"Possible, but worse than {beaten.Key}, whatever the priorities: {beaten.Select(p => PlanText.Method(p.Plan)).Humanize("and")}.";
        }
    }

    private IEnumerable<string> SetUp(RankedPlan plan, Answers known) => ["Set-up:", .. new SetupText(plan, known, knowledge).Lines()];

    /// <summary>What the plan asks of reach and hand, with its band.</summary>
    public static IEnumerable<string> Demands(RankedPlan plan)
    {
        if (plan.Demands.Need is { } need && double.IsFinite(need.MedianLength))
        {
            string band = double.IsFinite(need.HighLength)
                ? $"between {SlotText.Whole(need.LowLength)} and {SlotText.Centimetres(need.HighLength)} in 80 of 100 cases"
                : $"{SlotText.Centimetres(need.LowLength)} or more";
            yield return plan.Demands.ByBareHand
                ? $"Reach: the hand gets there in {SlotText.OfHundred(plan.Demands.ReachShare)} of 100 cases."
                : $"Length needed: about {SlotText.Centimetres(need.MedianLength)}, {band}. It gives {SlotText.Centimetres(plan.Demands.GivenLength)}.";
        }

        if (plan.Demands.Hardest is { DemandNewtons: > 0 } hardest && double.IsFinite(hardest.ShareOfAcceptable))
        {
            yield return $"Hardest for the hand: {SlotText.Operation(Words.Of(hardest.Kind)).ToLowerInvariant()}, {"newton".Counting((int)Math.Round(hardest.DemandNewtons))}, about {SlotText.OfHundred(hardest.ShareOfAcceptable)} percent of what this hand can comfortably give.";
        }
    }

    private string Unsettled(RankedPlan plan, Answers known) => string.Join("; ", plan.Unsettled
        .Where(q => !known.Knows(q))
        .Select(q => knowledge.Questions[q].Name));

    private static IEnumerable<string> RuledOut(Advice advice)
    {
        if (advice.RuledOut.IsEmpty)
        {
            yield break;
        }

        yield return "Ruled out:";
        foreach (string line in RuledOutText.Groups(advice))
        {
            yield return line;
        }
    }

    private static string Caution(Finding caution) => $"Caution, {Words.Of(caution.Rule.Severity)}. {Sentence(caution)}";

    /// <summary>What holds for every plan is said once, before them.</summary>
    private static IEnumerable<string> Common(Advice advice) => advice.ForEveryPlan.Select(Caution);

    /// <summary>The harms of which the first plan was warned and this one is too, in a few words each.</summary>
    private static string Again(RankedPlan plan, RankedPlan first, Advice advice) => string.Join(", ", plan.Cautions
        .Where(c => first.Cautions.Any(f => f.Rule.Id == c.Rule.Id) && !advice.ForEveryPlan.Any(f => f.Rule.Id == c.Rule.Id))
        .Select(c => c.Rule.Hazard).Distinct(StringComparer.Ordinal));
}
