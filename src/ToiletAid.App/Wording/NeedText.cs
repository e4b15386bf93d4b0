using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Wording;

/// <summary>Whether an aid is needed at all, and what to arrange where nothing can be offered.</summary>
public static class NeedText
{
    /// <summary>The first thing to say of advice that no red flag stops.</summary>
    /// <param name="advice">The advice.</param>
    public static string Sentence(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return advice.Need switch
        {
            AidNeed.No => "On these answers no aid is needed for reach: the person's own hand gets there.",
            AidNeed.TryHandFirst => "An aid may not be needed: try the person's own hand first.",
            AidNeed.Better => "The person can manage with their own hand, but another way suits them better.",
            AidNeed.Yes => $"The person cannot manage with their own hand. {Why(advice)}".TrimEnd(),
            _ => "No plan can be offered on these answers.",
        };
    }

    /// <summary>What to arrange, and whom to ask, where nothing can be offered.</summary>
    /// <param name="advice">The advice.</param>
    public static IEnumerable<string> Arrange(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        yield return "What could be arranged:";
        foreach (string way in advice.ToArrange)
        {
            yield return way;
        }

        yield return "Until one of these is in place, ask the community nursing or social care team to visit when cleaning is needed.";
    }

    private static string Why(Advice advice) =>
        advice.RuledOut.FirstOrDefault(r => r.Aid.Reach == ReachKind.BareHand) is { } hand ? AdviceText.Sentence(hand.Reasons[0]) : string.Empty;
}
