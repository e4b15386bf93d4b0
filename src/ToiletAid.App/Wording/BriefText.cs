using System.Collections.Concurrent;
using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>The result in the first breath: at most <see cref="MostSentences"/> sentences and <see cref="MostWords"/> words, the same wherever a result is told.</summary>
/// <param name="knowledge">Questions and limits.</param>
public sealed class BriefText(KnowledgeBase knowledge)
{
    /// <summary>Sentences that are told at most.</summary>
    public const int MostSentences = 8;

    /// <summary>Words that are told at most.</summary>
    public const int MostWords = 90;

    /// <summary>How often a first place holds, from which it is called fairly sure (decision).</summary>
    internal const double FairlySure = 0.7;

    private const int MostCautions = 2;

    /// <summary>What tries changes, when it is idle: each serves one thread at a time, and keeps what it has worked out for the next person.</summary>
    private readonly ConcurrentBag<Advisor> _idle = [];

    /// <summary>What is left out first where it would be too long; the plan, urgent warnings and how sure it is always stay.</summary>
    private static readonly ImmutableArray<BriefTopic> LeftOutFirst = [BriefTopic.Reason, BriefTopic.Unknown, BriefTopic.Caution, BriefTopic.Next];

    /// <summary>What can be arranged around a person, by question and option (decision).</summary>
    private static readonly ImmutableArray<(OptionId Option, string Words)> Arrangements =
    [
        (OptionIds.HelperSometimes, "a carer some of the time"),
        (OptionIds.HelperAlways, "a carer there every time"),
        (OptionIds.WaterBasinInReach, "water in reach of the toilet"),
        (OptionIds.SocketYes, "a protected socket near the toilet"),
        (OptionIds.FixturesYes, "permission to change the fixtures"),
        (OptionIds.PlaceOwnToilet, "the use of their own toilet"),
        (OptionIds.PlaceCommode, "a commode"),
        (OptionIds.PlaceBed, "cleaning in bed"),
    ];

    /// <summary>The brief result.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="known">The answers it rests on.</param>
    /// <returns>In the order in which it is said.</returns>
    public ImmutableArray<BriefPart> Of(Advice advice, Answers known)
    {
        ArgumentNullException.ThrowIfNull(advice);
        ArgumentNullException.ThrowIfNull(known);
        return !advice.Stops.IsEmpty ? [.. AdviceText.Stop(advice.Stops).Select(l => new BriefPart(BriefTopic.Warning, l))]
            : advice.Ranked.IsEmpty ? [.. Nothing(advice, known)]
            : Fitted([.. First(advice, advice.Ranked[0], known)]);
    }

    /// <summary>Words of a text, as a reader counts them.</summary>
    /// <param name="text">Any text.</param>
    public static int Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
    }

    private IEnumerable<BriefPart> Nothing(Advice advice, Answers known)
    {
        yield return new(BriefTopic.Plan, Change(known));
        foreach (string reason in RuledOutText.Reasons(advice).Take(2))
        {
            yield return new(BriefTopic.Reason, reason);
        }

        yield return new(BriefTopic.Next, "Until then, ask the community nursing team to visit.");
    }

    /// <summary>Which single change would make which plan possible: the first that does, of those that can be arranged, the simplest first.</summary>
    private string Change(Answers known)
    {
        var advisor = _idle.TryTake(out var idle) ? idle : new(knowledge, new() { ValueDraws = 8, WeightDraws = 100, AsksGrip = false });
        foreach (var (option, words) in Arrangements)
        {
            if (!known.Is(option)
                && advisor.FirstOffered(known.With(option.Question, new(new AnswerValue.Choice(option.Text), HowObtained.Reported))) is { } possible)
            {
                _idle.Add(advisor);
                return $"Nothing can be offered yet, but with {words}, {PlanText.The(possible)} could be.";
            }
        }

        _idle.Add(advisor);
        return "Nothing can be offered on these answers, and no single change that was tried would help.";
    }

    private IEnumerable<BriefPart> First(Advice advice, RankedPlan first, Answers known)
    {
        var told = first.Cautions.Where(c => c.Rule.Severity <= Severity.High).ToList();
        var urgent = told.FindAll(c => c.Rule.Severity == Severity.Urgent);
        foreach (var warning in urgent)
        {
            yield return new(BriefTopic.Warning, ToDo(warning));
        }

        yield return new(BriefTopic.Plan, $"{PlanText.Name(first.Plan)}.");
        yield return new(BriefTopic.Certainty, Certainty(advice.Held, advice.Ranked.ElementAtOrDefault(1)));
        foreach (string reason in Reasons(advice, first, known))
        {
            yield return new(BriefTopic.Reason, reason);
        }

        foreach (var caution in told.Except(urgent).Take(MostCautions))
        {
            yield return new(BriefTopic.Caution, ToDo(caution));
        }

        if (Unknown(advice, first) is { } unknown)
        {
            yield return new(BriefTopic.Unknown, unknown);
        }

        yield return new(BriefTopic.Next, Next(first, known));
    }

    private static string Certainty(double held, RankedPlan? second)
    {
        string share = SlotText.OfHundred(held);
        string sure = held switch
        {
            >= 0.9 => "Sure",
            >= FairlySure => "Fairly sure",
            >= 0.5 => "Not sure",
            _ => "A close call",
        };
        string next = second is null ? "nothing else can be offered" : $"second is {PlanText.The(second.Plan)}";
        return $"{sure}: first for {share} of 100 people like this; {next}.";
    }

    private static IEnumerable<string> Reasons(Advice advice, RankedPlan first, Answers known)
    {
        bool aid = first.Plan.Aid.Reach == ReachKind.Handle || first.Plan.Aid.Reach == ReachKind.Jet;
        string? gives = aid && first.Demands.Need is { } need && double.IsFinite(need.MedianLength) && !first.Demands.ByBareHand && first.Demands.GivenLength > need.MedianLength && SlotText.Centimetres(first.Demands.GivenLength) != SlotText.Centimetres(need.MedianLength)
            ? $"this gives {SlotText.Centimetres(first.Demands.GivenLength)} where {SlotText.Whole(need.MedianLength)} are needed" : null;
        var hand = advice.RuledOut.FirstOrDefault(r => r.Aid.Reach == ReachKind.BareHand && r.Aid.Method == MethodKind.Wipe);
        string? lacks = hand?.Reasons.FirstOrDefault(r => r.Rule.Id == RuleIds.HandDoesNotReach) is { } f && f.Slots.FirstOrDefault(s => s.Name == "needed") is { } slot && double.IsFinite(slot.Si)
            ? $"The hand alone falls {SlotText.Centimetres(slot.Si)} short"
            : hand?.Reasons.Any(r => r.Rule.Id == RuleIds.SeenNotToReach) == true ? "The hand alone was seen to fall short" : null;
        if (lacks is not null)
        {
            yield return gives is null ? $"{lacks}." : $"{lacks}; {gives}.";
        }
        else if (gives is not null)
        {
            yield return $"{char.ToUpperInvariant(gives[0])}{gives[1..]}.";
        }

        if (first.ComparedWith is { } other && advice.Ranked.FirstOrDefault(r => ReferenceEquals(r.Plan, other) || r.Plan.Key == other.Key) is { } ranked)
        {
            var causes = new CauseText(known);
            foreach (var reason in first.Reasons.Where(r => r.Contribution > 0.0005))
            {
                if (causes.Of(reason.Criterion, first, ranked) is { } cause)
                {
                    yield return $"{cause}.";
                    yield break;
                }
            }
        }
    }

    private static string? Unknown(Advice advice, RankedPlan first)
    {
        if (advice.Grip is { } grip)
        {
            return GripText.Stays(grip, first) ? "Grip was not measured and would not change it." : "Grip was not measured and could change it.";
        }

        return null;
    }

    private string Next(RankedPlan first, Answers known)
    {
        return first.Unsettled.Where(q => !known.Knows(q)).ToArray() is [var question, ..] ? $"Next: ask about {Topic(question)}."
            : first.Plan.Aid.Method == MethodKind.Helper ? "Next: agree who will help, and how."
            : first.Tried.IsEmpty ? "Next: try it dry and clothed."
            : "Next: review at the next visit.";
    }

    private string Topic(QuestionId question) => knowledge.Questions[question].Name;

    /// <summary>What to do, as the hazard table says it in brief.</summary>
    private static string ToDo(Finding caution) => caution.Rule.Brief is { } brief ? SlotText.Fill(brief, caution.Slots) : FirstSentence(caution);

    internal static string FirstSentence(Finding finding)
    {
        string text = AdviceText.Sentence(finding);
        int end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text : text[..(end + 1)];
    }

    private static ImmutableArray<BriefPart> Fitted(List<BriefPart> parts)
    {
        foreach (var topic in LeftOutFirst)
        {
            while ((parts.Count > MostSentences || parts.Sum(p => Words(p.Sentence)) > MostWords) && parts.FindLastIndex(p => p.Topic == topic) is >= 0 and var i
                && parts.Count(p => p.Topic == topic) > (topic == BriefTopic.Reason ? 1 : 0))
            {
                parts.RemoveAt(i);
            }
        }

        return [.. parts];
    }
}
