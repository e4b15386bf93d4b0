using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Wording;

/// <summary>What became of the measurements over several visits.</summary>
public static class TrendText
{
    /// <summary>Every value with its day, then the last against the first.</summary>
    public static string Line(Trend trend)
    {
        string values = trend.Points.Select(p => $"{Spoken.Amount(p.Amount, Units.Find(p.Unit)!)} on {IsoDay.Of(p.Visit.Date)}").Humanize("and");
        string overall = trend.FirstToLast is { } d ? $"From first to last it {(d.Change > 0 ? "rose" : "fell")}. {DifferenceText.VerdictOf(d)}" : "From first to last there is no difference.";
        return $"{Name(trend)} {values}. {overall}";
    }

    /// <summary>What was measured.</summary>
    public static string Name(Trend trend) => trend.Part is { } part ? $"{Spoken.Capital(part.Label)}." : $"{Spoken.Capital(trend.Question.Name)}.";

    /// <summary>What was first at each visit.</summary>
    public static string Firsts(IEnumerable<(Visit Visit, Advice Advice)> visits) =>
        $"First place: {visits.Select(v => $"{First(v.Advice)} on {IsoDay.Of(v.Visit.Date)}").Humanize("and")}.";

    private static string First(Advice advice) => !advice.Stops.IsEmpty ? "a red flag"
        : advice.Ranked.IsEmpty ? "no plan"
        : PlanText.Method(advice.Ranked[0].Plan);
}
