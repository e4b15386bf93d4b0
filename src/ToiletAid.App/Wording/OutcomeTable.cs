using System.Globalization;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Person;
using ToiletAid.Core.Statistics;

namespace ToiletAid.App.Wording;

/// <summary>What came out of a clinic's trials as CSV: one row a figure, with the same columns for all.</summary>
public static class OutcomeTable
{
    /// <summary>The table with its header. Ids and numbers hold no comma and no quote, so nothing needs quoting.</summary>
    /// <param name="tally">What was counted.</param>
    public static IEnumerable<string> Rows(OutcomeTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        yield return "what,id,people,failed,expectedToFail,failedShare,failedLow,failedHigh,predicted,seen,spread";
        var all = tally.All;
        foreach (var kind in tally.Kinds.Prepend(all))
        {
            yield return Failures("kind", kind.Aid.Length == 0 ? "all" : kind.Aid, kind.People, kind.Failed, kind.ExpectedToFail);
            foreach (var criterion in Enum.GetValues<Criterion>())
            {
                var cell = kind.ByCriterion[(int)criterion];
                if (cell.Count > 0)
                {
                    yield return $"criterion,{(kind.Aid.Length == 0 ? "all" : kind.Aid)}/{Words.Of(criterion)},{cell.Count},,,,,,{Number(cell.Predicted)},{Number(cell.Seen)},{Number(cell.Spread)}";
                }
            }
        }

        foreach (var band in OutcomeText.Bands)
        {
            var (count, failed, works) = all.Between(band.Low, band.High);
            if (count > 0)
            {
                yield return Failures("said-to-work", $"{Number(band.Low)}-{Number(band.High)}", count, failed, count - works);
            }
        }

        foreach (var (id, count) in all.Problems)
        {
            yield return $"reason,{id},{count},,,,,,,,";
        }

        foreach (var sign in tally.Foresight.Signs(int.MaxValue, out _).Where(s => s.ByChance < 1))
        {
            string value = sign.Option is { } option ? "=" + option : sign.Below is { } below ? "<" + Number(below) : ">=" + Number(sign.From!.Value);
            yield return Failures("sign", $"{(sign.Question.Length == 0 ? "predicted" : sign.Question)}{(sign.Part is null ? string.Empty : "/" + sign.Part)}{value}", sign.People, sign.Failed, sign.Expected);
        }

        foreach (var (days, count) in tally.DaysFollowed)
        {
            yield return $"followed-days,{days.ToString(CultureInfo.InvariantCulture)},{count},,,,,,,,";
        }

        for (int before = 0; before < tally.Levels.Length; before++)
        {
            for (int after = 0; after < tally.Levels.Length; after++)
            {
                if (tally.At(before, after) > 0)
                {
                    yield return $"level,{tally.Levels[before]}>{tally.Levels[after]},{tally.At(before, after)},,,,,,,,";
                }
            }
        }
    }

    private static string Failures(string what, string id, long people, long failed, double expected)
    {
        var interval = Shares.Exact(failed, people, OutcomeText.Confidence);
        return $"{what},{id},{people},{failed},{Number(expected)},{(people == 0 ? string.Empty : Number((double)failed / people))},{Number(interval.Low)},{Number(interval.High)},,,";
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
