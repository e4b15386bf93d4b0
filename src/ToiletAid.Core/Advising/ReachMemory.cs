using System.Globalization;
using System.Text;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Advising;

/// <summary>Reach of persons that were computed before. Most answers do not change the reach, and it is the dearest part of the work.</summary>
/// <param name="knowledge">Bodies and joints.</param>
/// <param name="seed">Seed of the draws.</param>
/// <param name="kept">How many are kept; then it starts afresh, so that a long batch does not fill the memory.</param>
internal sealed class ReachMemory(Knowledge knowledge, ulong seed, int kept)
{
    private readonly Dictionary<string, ReachReport> _reports = new(StringComparer.Ordinal);

    /// <summary>Reach on these answers.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="draws">Persons drawn; 0 for the middle one only.</param>
    /// <param name="withDetail">True to learn which joint limits and what a straight aid pays.</param>
    internal ReachReport Of(Answers known, int draws, bool withDetail)
    {
        string key = Key(known, draws, withDetail);
        if (!_reports.TryGetValue(key, out var report))
        {
            if (_reports.Count >= kept)
            {
                _reports.Clear();
            }

            report = ReachAnalysis.Analyse(
                knowledge.Body,
                AnswerMapping.Reach(known),
                new() { Seed = seed, Draws = draws, WithDetail = withDetail, Postures = PlanSpace.Postures(known) });
            _reports[key] = report;
        }

        return report;
    }

    private static string Key(Answers known, int draws, bool withDetail)
    {
        var key = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{draws}{withDetail}{known.Choice("posture")}{(known.Choice("place") == "bed" ? "bed" : string.Empty)}");
        foreach (string question in AnswerMapping.ReachQuestions)
        {
            key.Append('|');
            switch (known[question])
            {
                case { Value: AnswerValue.Choice c } a:
                    key.Append(c.Option).Append(a.How);
                    break;
                case { Value: AnswerValue.Number n } a:
                    key.Append(CultureInfo.InvariantCulture, $"{n.Amount:R}{n.Unit}{a.How}");
                    break;
                case { Value: AnswerValue.Many m }:
                    key.AppendJoin(',', m.Options);
                    break;
                case { Value: AnswerValue.Parts p } a:
                    key.AppendJoin(',', p.Amounts.Select(x => string.Create(CultureInfo.InvariantCulture, $"{x.Key}{x.Value:R}"))).Append(p.Unit).Append(a.How);
                    break;
                default:
                    break;
            }
        }

        return key.ToString();
    }
}
