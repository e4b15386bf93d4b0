using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>Two visits side by side as lines to be read aloud: what changed, whether it is real, what moved the recommendation.</summary>
/// <param name="knowledge">Questions.</param>
public sealed class CompareText(KnowledgeBase knowledge)
{
    private const int MostOneSided = 5;

    /// <summary>The whole comparison, without the trend.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="person">Code of the person.</param>
    /// <param name="sameRater">True when the same person measured both times, false when not, null when that is not known.</param>
    public IEnumerable<string> Lines(Comparison comparison, string person, bool? sameRater) =>
    [
        $"Person {person}. Visit {comparison.From.Number} on {IsoDay.Of(comparison.From.Date)} against visit {comparison.To.Number} on {IsoDay.Of(comparison.To.Date)}.",
        .. Stops(comparison),
        .. Answers(comparison, sameRater),
        .. Since(comparison).SelectMany(new TrialText(knowledge).Lines),
        .. Recommendation(comparison),
        AdviceText.Limits,
    ];

    /// <summary>What was tried between the visits.</summary>
    private static IEnumerable<PastTrial> Since(Comparison c) => c.To.Answers.Trials.Skip(c.From.Answers.Trials.Length);

    private static IEnumerable<string> Stops(Comparison c)
    {
        foreach (var (visit, advice) in ((Visit, Advice)[])[(c.From, c.Before), (c.To, c.After)])
        {
            foreach (var stop in advice.Stops)
            {
                yield return $"On {IsoDay.Of(visit.Date)} a red flag stopped the ranking. {AdviceText.Sentence(stop)}";
            }
        }
    }

    private static IEnumerable<string> Answers(Comparison comparison, bool? sameRater)
    {
        string same = comparison.Same.IsEmpty ? string.Empty : $" {Spoken.Capital("answer".ToQuantity(comparison.Same.Length))} {(comparison.Same.Length == 1 ? "is" : "are")} the same.";
        if (comparison.Differences.IsEmpty)
        {
            yield return "No answer changed." + same;
            yield break;
        }

        if (comparison.Differences.Any(d => d.Rule is { Spread: LimitSpread.Rater }))
        {
            yield return sameRater switch
            {
                true => "The same person measured both times.",
                false => "Different people measured.",
                _ => "It is not known whether the same person measured both times. Use the option rater to say so, and fewer changes stay uncertain.",
            };
        }

        foreach (var (verdict, heading) in ((Verdict, string)[])[(Verdict.Real, "Real changes"), (Verdict.WithinError, "Within measurement error"), (Verdict.Unknown, "Uncertain")])
        {
            var some = comparison.Differences.Where(d => d.Verdict == verdict && !IsLeftOut(comparison, d)).ToList();
            yield return $"{heading}: {(some.Count == 0 ? "none" : some.Count)}.";
            foreach (var d in some)
            {
                yield return DifferenceText.Line(d);
            }
        }

        if (comparison.Differences.Count(d => IsLeftOut(comparison, d)) is > 0 and int leftOut)
        {
            yield return $"Answered at one visit only: {leftOut}. Use --format json to list them.";
        }

        if (same.Length > 0)
        {
            yield return same.TrimStart();
        }
    }

    /// <summary>A few answers that one visit lacks are read out; when a short visit is held against a long one, they are counted.</summary>
    private static bool IsLeftOut(Comparison c, AnswerDifference d) =>
        d.Reason == VerdictReason.OneVisitOnly && c.Differences.Count(other => other.Reason == VerdictReason.OneVisitOnly) > MostOneSided;

    private IEnumerable<string> Recommendation(Comparison c)
    {
        if (!c.Before.Stops.IsEmpty || !c.After.Stops.IsEmpty)
        {
            yield break;
        }

        yield return Firsts(c);
        foreach (string line in c.Places.Select(Place))
        {
            yield return line;
        }

        if (c.Places.IsEmpty && !c.After.Ranked.IsEmpty)
        {
            yield return "Every kind of aid keeps its place.";
        }

        foreach (string line in c.Lead is { } lead && !lead.Movers.IsEmpty ? Lead(lead) : [])
        {
            yield return line;
        }

        if (c.Differences.Any(d => d.Verdict != Verdict.Real && d.Reason != VerdictReason.OtherWay))
        {
            yield return OnlyReal(c);
        }
    }

    private static string Firsts(Comparison c)
    {
        string? before = c.Before.Ranked.FirstOrDefault() is { } b ? PlanText.Name(b.Plan) : null, now = c.After.Ranked.FirstOrDefault() is { } a ? PlanText.Name(a.Plan) : null;
        return before == now && now is not null
            ? $"First at both visits: {PlanText.Lower(now)}."
            : $"First before: {(before is null ? "no plan could be offered" : PlanText.Lower(before))}. First now: {(now is null ? "no plan can be offered" : PlanText.Lower(now))}.";
    }

    private static string Place(PlaceChange p) => p switch
    {
        { Before: { } before, After: { } after } => $"{p.Aid.Name}: from place {before} to place {after}.",
        { After: { } after } => $"{p.Aid.Name}: was ruled out, now place {after}.",
        _ => $"{p.Aid.Name}: was place {p.Before}, now ruled out.",
    };

    private IEnumerable<string> Lead(LeadChange lead)
    {
        long before = Points.Tenths(lead.Before), after = Points.Tenths(lead.After), whole = after - before;
        long[] shares = Points.Parts([.. lead.Movers.Select(m => m.Share)], whole);
        yield return $"Lead of {PlanText.Lower(lead.One.Name)} over {PlanText.Lower(lead.Other.Name)}: {Points.Say(before)} of 100 points before, {Points.Say(after)} now.";
        yield return whole == 0 && shares.All(s => s == 0)
            ? "None of the changes moved this lead."
            : $"That is {Points.Say(whole)} points, made up of:";
        int silent = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            if (shares[i] == 0)
            {
                silent++;
            }
            else
            {
                yield return $"{Name(lead.Movers[i])} {Points.Say(shares[i])} points.";
            }
        }

        if (silent > 0 && silent < shares.Length)
        {
            yield return $"The other {(silent == 1 ? "change" : $"{silent} changes")}: 0.";
        }

        if (lead.Movers.Any(m => m.Topic is not null))
        {
            yield return "More than ten answers changed, so they are grouped by topic.";
        }

        if (lead.IsSampled)
        {
            yield return "Not every order of the changes was worked out, so each share is an estimate, but their total is exact.";
        }
    }

    private string Name(Mover mover) => mover.IsTrials ? "Trials since then:" : mover.Topic is { } topic
        ? $"{topic}, {"answer".ToQuantity(mover.Questions.Length)}:"
        : $"{Spoken.Capital(knowledge.Questions[mover.Questions[0]].Name)}.";

    private static string OnlyReal(Comparison c) => c.FirstIfOnlyReal is not { } plan
        ? "Counting only the real changes, no plan could be offered."
        : $"Counting only the real changes, first would be {PlanText.Lower(PlanText.Name(plan))}.";
}
