using System.Collections.Frozen;
using Humanizer;
using ToiletAid.Core.Advising;

namespace ToiletAid.App.Wording;

/// <summary>Kinds of aid that cannot be offered, grouped by reason so that each reason is said once.</summary>
public static class RuledOutText
{
    /// <summary>A reason as it is said of several kinds of which each has its own numbers, by the rule.</summary>
    internal static readonly FrozenDictionary<string, string> OfSeveral = new Dictionary<string, string>
    {
        ["too-many-steps"] = "These have more steps than the {follows} that the person follows in a row, {prompting}.",
        ["needs-two-hands"] = "Each has a step that takes two hands, and one is free.",
        ["no-usable-grasp"] = "Each has a step that needs a grip this person cannot manage.",
        ["too-weak"] = "Each has a step that takes more force than this hand gives.",
        ["too-hard-to-repeat"] = "Each has a step that this hand cannot comfortably repeat every day.",
        ["too-fine"] = "Each has a step that needs finer handling than this hand can manage.",
        ["too-short"] = "These are too short for this person {approach}.",
    }.ToFrozenDictionary();

    /// <summary>One line for each reason, the reason that rules out most first.</summary>
    /// <param name="advice">The advice.</param>
    public static IEnumerable<string> Groups(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return Grouped(advice).Select(g => g.Count() == 1
            ? $"{g.First().Aid.Name}. {Said(g, AdviceText.Sentence)}"
            : $"{Capital("kind".ToQuantity(g.Count(), ShowQuantityAs.Words))}: {g.Select(r => PlanText.Lower(r.Aid.Name)).Humanize("and")}. {Said(g, AdviceText.Sentence)}");
    }

    /// <summary>The first sentence of each reason with the number of kinds that it rules out, the reason that rules out most first.</summary>
    /// <param name="advice">The advice.</param>
    public static IEnumerable<string> Reasons(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return Grouped(advice).Select(g => $"{Capital("kind".ToQuantity(g.Count(), ShowQuantityAs.Words))}: {PlanText.Lower(Said(g, BriefText.FirstSentence))}");
    }

    private static IEnumerable<IGrouping<string, RuledOutAid>> Grouped(Advice advice) => advice.RuledOut
        .GroupBy(r => Together(r.Reasons[0]) ?? AdviceText.Sentence(r.Reasons[0]), StringComparer.Ordinal)
        .OrderByDescending(g => g.Count());

    /// <summary>The reason with its numbers where they are the same for all of the group, else as it is said of several.</summary>
    private static string Said(IGrouping<string, RuledOutAid> group, Func<Finding, string> sentence) =>
        group.Select(r => sentence(r.Reasons[0])).Distinct(StringComparer.Ordinal).Take(2).ToList() is [var one] ? one : group.Key;

    private static string? Together(Finding reason) => OfSeveral.TryGetValue(reason.Rule.Id, out string? text) ? SlotText.Fill(text, reason.Slots) : null;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
