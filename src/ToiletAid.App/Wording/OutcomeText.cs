using System.Globalization;
using ToiletAid.App.Typed;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Statistics;

namespace ToiletAid.App.Wording;

/// <summary>What came out of a clinic's trials, as sentences to be read aloud.</summary>
/// <param name="knowledge">Names of kinds, findings and questions.</param>
public sealed class OutcomeText(KnowledgeBase knowledge)
{
    /// <summary>Confidence of every interval that is told.</summary>
    public const double Confidence = 0.95;

    private const int MostSigns = 3;
    private const int DaysOfWeek = 7;

    /// <summary>Less likely by chance than this is said to stand out.</summary>
    private const double Rare = 0.05;

    /// <summary>Bands of the predicted share of working in which calibration is told.</summary>
    public static IReadOnlyList<(double Low, double High)> Bands { get; } = [(0, 0.5), (0.5, 0.7), (0.7, 0.8), (0.8, 0.9), (0.9, 1)];

    /// <summary>Everything.</summary>
    /// <param name="tally">What was counted.</param>
    public IEnumerable<string> Lines(OutcomeTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        var all = tally.All;
        yield return $"{People(tally.People)} looked at. A plan was tried with {Number(tally.PeopleWithTries)} of them, {Number(all.People)} first tries of a kind of aid in all, {Number(all.DryOnly)} of them dry and clothed only.";
        if (tally.Unknown > 0)
        {
            yield return $"{Number(tally.Unknown)} tries are left out: their plan is not among the kinds of aid. Give the clinic's own with --aids.";
        }

        if (all.People == 0)
        {
            yield break;
        }

        yield return "Only the first try of a kind with a person counts. These are small numbers from one clinic, not a study: a difference may be due to chance, or to who was given what.";
        foreach (string line in Calibration(tally, all).Concat(Kinds(tally)).Concat(ByCriterion(all)).Concat(Reasons(all)).Concat(Signs(tally)).Concat(Followed(tally)).Concat(Levels(tally)))
        {
            yield return line;
        }

        yield return AdviceText.Limits;
    }

    /// <summary>Of plans that were said to work with so many of 100 people, with how many they did.</summary>
    /// <param name="tally">What was counted.</param>
    /// <param name="band">The band.</param>
    public static string Band(KindTally tally, (double Low, double High) band)
    {
        ArgumentNullException.ThrowIfNull(tally);
        var (count, failed, works) = tally.Between(band.Low, band.High);
        var interval = Shares.Exact(count - failed, count, Confidence);
        string verdict = interval.Holds(works / count) ? "That agrees." : works / count > interval.High ? "That is fewer than was said." : "That is more than was said.";
        return $"Of plans said to work with {SlotText.OfHundred(band.Low)} to {SlotText.OfHundred(band.High)} of 100 people, {SlotText.OfHundred(works / count)} on average, {Number(count - failed)} of {Number(count)} worked: {Said(count - failed, count)}. {verdict}";
    }

    private static IEnumerable<string> Calibration(OutcomeTally tally, KindTally all)
    {
        yield return $"{Number(all.Failed)} of {Number(all.People)} first tries failed, where {One(all.ExpectedToFail)} were predicted. Failed is {Said(all.Failed, all.People)}.";
        foreach (var band in Bands.Where(b => tally.All.Between(b.Low, b.High).Count > 0))
        {
            yield return Band(all, band);
        }
    }

    private IEnumerable<string> Kinds(OutcomeTally tally)
    {
        foreach (var kind in tally.Kinds.OrderByDescending(k => k.People).ThenBy(k => k.Aid, StringComparer.Ordinal))
        {
            yield return $"{Name(kind.Aid)}: {Number(kind.Failed)} of {Number(kind.People)} failed, where {One(kind.ExpectedToFail)} were predicted. Failed is {Said(kind.Failed, kind.People)}.";
        }
    }

    private static IEnumerable<string> ByCriterion(KindTally all)
    {
        foreach (var criterion in Enum.GetValues<Criterion>().Where(c => c != Criterion.Reach))
        {
            var cell = all.ByCriterion[(int)criterion];
            if (cell.Count > 0)
            {
                yield return $"{PlanText.Of(criterion)}, where a try did not fail: {SlotText.OfHundred(cell.Predicted)} of 100 predicted and {SlotText.OfHundred(cell.Seen)} seen on average, with {People(cell.Count)}{(cell.Count < 2 ? string.Empty : $", spread {SlotText.OfHundred(cell.Spread)}")}.{(criterion is Criterion.Skin or Criterion.Contact ? " Only harm is noted, so it is seen too low." : string.Empty)}";
            }
        }
    }

    private IEnumerable<string> Reasons(KindTally all)
    {
        if (all.Failed > 0)
        {
            yield return $"What went wrong in failed tries: {string.Join(", ", all.Problems.OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal).Select(p => $"{PlanText.Lower(Finding(p.Key))} {Number(p.Value)}"))}.";
        }
    }

    private IEnumerable<string> Signs(OutcomeTally tally)
    {
        var signs = tally.Foresight.Signs(MostSigns, out int looks);
        if (tally.All.Failed == 0 || looks == 0)
        {
            yield break;
        }

        var telling = signs.Where(s => s.ByChance < Rare).ToList();
        yield return telling.Count == 0
            ? $"No answer or number foretold the failures: {looks} were looked at, and none stands out beyond chance."
            : $"What would have foretold failures, out of {looks} answers and number limits looked at:";
        foreach (var sign in telling.Count == 0 ? signs.Take(1) : telling)
        {
            yield return $"{(telling.Count == 0 ? "Most telling, and it may well be chance: " : string.Empty)}{Sign(sign)}";
        }
    }

    /// <summary>A sign in a sentence.</summary>
    /// <param name="sign">The sign.</param>
    public string Sign(Sign sign)
    {
        ArgumentNullException.ThrowIfNull(sign);
        string what, value;
        if (sign.Question.Length == 0)
        {
            (what, value) = ($"predicted {sign.Part}", sign.Below is { } b ? $"below {SlotText.OfHundred(b)} of 100" : $"{SlotText.OfHundred(sign.From!.Value)} of 100 or more");
        }
        else
        {
            var question = knowledge.Questions.Find(sign.Question)!;
            var part = question.Parts.FirstOrDefault(p => p.Id == sign.Part);
            what = part is null ? $"\"{question.Prompt}\"" : $"\"{question.Prompt}\" {part.Label}";
            string unit = (part?.Number ?? question.Number)?.Units[0] ?? string.Empty;
            value = sign.Option is { } option ? $"answered {PlanText.Lower(question.FindOption(option)?.Label ?? option)}"
                : sign.Below is { } below ? $"below {Amount(below, unit)}"
                : $"{Amount(sign.From!.Value, unit)} or more";
        }

        string chance = sign.ByChance < 0.001 ? "less than 1 in 1000" : string.Create(CultureInfo.InvariantCulture, $"{sign.ByChance:0.000}");
        return $"{Spoken.Capital(what)}, {value}: {Number(sign.Failed)} of {Number(sign.People)} failed, where {One(sign.Expected)} were predicted. Probability by chance, given all that was looked at: {chance}.";
    }

    private static IEnumerable<string> Followed(OutcomeTally tally)
    {
        long people = tally.DaysFollowed.Values.Sum(), never = tally.DaysFollowed.GetValueOrDefault(0);
        if (people == 0)
        {
            yield break;
        }

        yield return $"Follow-up: {Number(never)} of {Number(people)} people have no visit after the day of their first trial.{(never == people ? string.Empty : $" Half of the others were followed {Weeks(tally, never, 0.5)} weeks or longer, the longest tenth {Weeks(tally, never, 0.9)} weeks or longer.")}";
    }

    private static string Weeks(OutcomeTally tally, long never, double share)
    {
        long people = tally.DaysFollowed.Values.Sum() - never, passed = 0;
        foreach (var (days, count) in tally.DaysFollowed.Where(d => d.Key > 0))
        {
            passed += count;
            if (passed >= people * share)
            {
                return Number(days / DaysOfWeek);
            }
        }

        return "0";
    }

    private static IEnumerable<string> Levels(OutcomeTally tally)
    {
        int count = tally.Levels.Length;
        long better = 0, same = 0, worse = 0;
        double steps = 0;
        for (int before = 0; before < count; before++)
        {
            for (int after = 0; after < count; after++)
            {
                long people = tally.At(before, after);
                (better, same, worse) = (better + (after < before ? people : 0), same + (after == before ? people : 0), worse + (after > before ? people : 0));
                steps += people * (before - after);
            }
        }

        long all = better + same + worse;
        if (all > 0)
        {
            yield return $"Level of help, item GG0130C, before and at the last try, noted with {People(all)}: less help with {Number(better)}, the same with {Number(same)}, more with {Number(worse)}. Less help is {Said(better, all)}. On average {Spoken.Number(Math.Round(Math.Abs(steps / all), 1))} levels {(steps < 0 ? "lower" : "higher")}. Nobody was compared without a trial.";
        }

        if (tally.WithGoal > 0)
        {
            yield return $"The goal was reached with {Number(tally.GoalReached)} of {Number(tally.WithGoal)} people: {Said(tally.GoalReached, tally.WithGoal)}.";
        }
    }

    /// <summary>A share with its exact interval.</summary>
    private static string Said(long count, long of)
    {
        var interval = Shares.Exact(count, of, Confidence);
        return $"{SlotText.OfHundred((double)count / of)} of 100, exact 95 percent interval {SlotText.OfHundred(interval.Low)} to {SlotText.OfHundred(interval.High)}";
    }

    private static string Amount(double value, string unit) => Spoken.Amount(Math.Round(value, 1), Core.Quantities.Units.Find(unit)!);

    private string Name(string aid) => knowledge.Catalogue.Aids.FirstOrDefault(a => a.Id == aid)?.Name ?? aid;

    private string Finding(string id) => knowledge.Trials.Problems.Concat(knowledge.Trials.Cleanliness).Concat(knowledge.Trials.Levels).FirstOrDefault(f => f.Id == id)?.Label ?? id;

    private static string People(long count) => count == 1 ? "1 person" : $"{Number(count)} people";

    private static string Number(long count) => count.ToString("N0", CultureInfo.InvariantCulture);

    private static string One(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
