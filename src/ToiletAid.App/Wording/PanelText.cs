using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Panels;

namespace ToiletAid.App.Wording;

/// <summary>How a panel agrees, as sentences to be read aloud.</summary>
/// <param name="knowledge">Names of the kinds.</param>
public sealed class PanelText(KnowledgeBase knowledge)
{
    private const int MostCases = 3;

    /// <summary>Everything.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="kinds">Ids of the kinds, in order.</param>
    /// <param name="raters">The raters.</param>
    /// <param name="seed">Seed of the intervals.</param>
    public IEnumerable<string> Lines(ImmutableArray<PanelCase> cases, ImmutableArray<string> kinds, ImmutableArray<Rater> raters, ulong seed)
    {
        var agreement = new PanelAgreement([.. cases.Select(c => c.Tool(kinds))], raters, seed);
        var (same, all) = agreement.FirstsShared();
        yield return $"{Number(raters.Length)} {(raters.Length == 1 ? "rater" : "raters")}, {Number(cases.Length)} cases, {Number(kinds.Length)} kinds of aid. 1 is full agreement; 0 is chance agreement for kappa and no agreement for concordance. The 95 percent interval over cases is in brackets.";
        if (raters.Length > 1)
        {
            yield return $"Raters with each other: weighted kappa {Said(agreement.KappaAmong())}, concordance W {Said(agreement.ConcordanceAmong())}.";
        }

        yield return $"Raters with the tool: weighted kappa {Said(agreement.KappaWithTool())}, concordance W with the mean order of the raters {Said(agreement.ConcordanceWithTool())}.";
        yield return $"The tool's first is a rater's first in {Number(same)} of {Number(all)} ratings.";
        foreach (var rater in raters)
        {
            yield return $"Rater {rater.Name} with the tool: weighted kappa {Said(agreement.KappaWithTool(rater))}.";
        }

        yield return "Where tool and raters differ most:";
        foreach (int number in Enumerable.Range(0, cases.Length).OrderByDescending(agreement.Distance).ThenBy(n => n).Take(MostCases))
        {
            yield return Case(cases[number], kinds, agreement, number);
        }

        yield return "Agreement of a few raters on invented cases says how plausible they find the order, not that it is right for patients.";
    }

    private string Case(PanelCase one, ImmutableArray<string> kinds, PanelAgreement agreement, int number)
    {
        string panel = kinds[agreement.PanelFirst(number)];
        var tool = one.Advice.Ranked[0];
        string among = agreement.ConcordanceOf(number) is { } w ? $", raters with each other W {Figure(w)}" : string.Empty;
        string start = $"Case {one.Code}, {Figure(agreement.Distance(number))} grades apart on average{among}.";
        if (tool.Plan.Aid.KindId == panel)
        {
            return $"{start} Both put {PlanText.Method(tool.Plan)} first.";
        }

        string firsts = $"{start} The tool puts {PlanText.Method(tool.Plan)} first, the raters {PlanText.Lower(Name(panel))}.";
        if (one.Advice.Ranked.FirstOrDefault(r => r.Plan.Aid.KindId == panel) is { } other)
        {
            int most = Enumerable.Range(0, tool.Criteria.Length).MaxBy(c => one.Advice.Weights[c] * (tool.Criteria[c] - other.Criteria[c]));
            return $"{firsts} What drives it is {PlanText.Lower(PlanText.Of((Criterion)most))}: {SlotText.OfHundred(tool.Criteria[most])} of 100 against {SlotText.OfHundred(other.Criteria[most])}, with a weight of {SlotText.OfHundred(one.Advice.Weights[most])} of 100.";
        }

        return one.Advice.RuledOut.FirstOrDefault(r => r.Aid.Id == panel) is { } ruledOut ? $"{firsts} The tool rules it out: {AdviceText.Sentence(ruledOut.Reasons[0])}" : firsts;
    }

    private string Name(string id) => knowledge.Catalogue.Aids.First(a => a.Id == id).Name;

    private static string Said(Estimate estimate) => estimate.Value is not { } value ? "none"
        : estimate.Range is { } range ? $"{Figure(value)} ({Figure(range.Low)} to {Figure(range.High)})" : Figure(value);

    private static string Figure(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
