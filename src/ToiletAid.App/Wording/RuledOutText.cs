using Humanizer;
using ToiletAid.Core.Advising;

namespace ToiletAid.App.Wording;

/// <summary>Kinds of aid that cannot be offered, grouped by reason so that each reason is said once.</summary>
public static class RuledOutText
{
    /// <summary>One line for each reason, the reason that rules out most first.</summary>
    /// <param name="advice">The advice.</param>
    public static IEnumerable<string> Groups(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return advice.RuledOut
            .GroupBy(r => AdviceText.Sentence(r.Reasons[0]), StringComparer.Ordinal)
            .OrderByDescending(g => g.Count())
            .Select(g => g.Count() == 1 ? $"{g.First().Aid.Name}. {g.Key}" : $"{Capital("kind".ToQuantity(g.Count(), ShowQuantityAs.Words))}: {g.Select(r => PlanText.Lower(r.Aid.Name)).Humanize("and")}. {g.Key}");
    }

    /// <summary>The first sentence of each reason with the number of kinds that it rules out, the reason that rules out most first.</summary>
    /// <param name="advice">The advice.</param>
    public static IEnumerable<string> Reasons(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return advice.RuledOut
            .GroupBy(r => BriefText.FirstSentence(r.Reasons[0]), StringComparer.Ordinal)
            .OrderByDescending(g => g.Count())
            .Select(g => $"{Capital("kind".ToQuantity(g.Count(), ShowQuantityAs.Words))}: {PlanText.Lower(g.Key)}");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
