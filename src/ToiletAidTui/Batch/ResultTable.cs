using System.Globalization;
using nietras.SeparatedValues;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Batch;

/// <summary>Results as CSV: one row a plan. A resumed run adds to a file that has its header already.</summary>
/// <param name="top">How many plans to give.</param>
/// <param name="withHeader">True to begin with the names of the columns.</param>
/// <param name="clinic">Checksum of the clinic's own values, which then fill one more column; null where they are not used.</param>
internal sealed class ResultTable(int top, bool withHeader, string? clinic) : ResultForm
{
    private readonly string[] _columns =
    [
        "person", "date", "stop", "rank", "aid", "addOns", "companion", "approach", "posture", "value", "firstShare",
        .. Enum.GetValues<Criterion>().Select(Words.Of), "cautions", "variant",
        .. clinic is null ? (string[])[] : ["clinic"],
    ];

    internal override string Of(Profile profile, Advice advice)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var table = Sep.New(',').Writer(o => o with { Escape = true, WriteHeader = false, CultureInfo = CultureInfo.InvariantCulture }).To(text, leaveOpen: true);
        if (advice.Ranked.IsEmpty)
        {
            Row(table, profile, advice, null);
        }

        foreach (var plan in advice.Ranked.Where(p => p.BeatenBy is null).Take(top))
        {
            Row(table, profile, advice, plan);
        }

        table.Flush();
        return text.ToString();
    }

    internal override string Before(bool first) => first && withHeader ? string.Join(',', _columns) + "\n" : string.Empty;

    private void Row(SepWriter table, Profile profile, Advice advice, RankedPlan? ranked)
    {
        string[] cells =
        [
            profile.Person,
            IsoDay.Of(profile.Latest.Date),
            string.Join(' ', advice.Stops.Select(s => s.Rule.Id)),
            ranked?.Rank.ToString(CultureInfo.InvariantCulture) ?? string.Empty,
            ranked?.Plan.Aid.Id ?? string.Empty,
            ranked is null ? string.Empty : string.Join(' ', ranked.Plan.AddOns.Select(a => a.Id)),
            ranked?.Plan.Companion?.Id ?? string.Empty,
            ranked?.Plan.Approach is { } approach ? Words.Of(approach) : string.Empty,
            ranked is null ? string.Empty : Words.Of(ranked.Plan.Posture),
            Number(ranked?.Value),
            Number(ranked?.FirstShare),
            .. Enum.GetValues<Criterion>().Select(c => Number(ranked?.Criteria[(int)c])),
            ranked is null ? string.Empty : string.Join(' ', ranked.Cautions.Select(c => c.Rule.Id)),
            ranked?.Plan.Variant?.Id ?? string.Empty,
            .. clinic is null ? (string[])[] : [clinic],
        ];
        using var row = table.NewRow();
        for (int i = 0; i < cells.Length; i++)
        {
            row[_columns[i]].Set(cells[i]);
        }
    }

    private static string Number(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture) ?? string.Empty;
}
