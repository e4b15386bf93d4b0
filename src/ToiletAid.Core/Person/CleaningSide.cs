namespace ToiletAid.Core.Person;

/// <summary>Which hand cleans, beside which side a precaution holds for.</summary>
public static class CleaningSide
{
    /// <summary>True when a precaution of an arm holds for one side only, and the hand that cleans is, or can be, the other one.</summary>
    /// <param name="known">Answers as given.</param>
    public static bool IsSpared(Answers known) => Hand(known) is { } hand
        && (hand == WorkingHand.Left ? known.Is(OptionIds.PrecautionSideRight) : known.Is(OptionIds.PrecautionSideLeft));

    /// <summary>The hand that should clean, left or right; null where it is not known or either will do.</summary>
    /// <param name="known">Answers as given.</param>
    public static WorkingHand? Hand(Answers known) => known.Choice(QuestionIds.Hand) switch
    {
        WorkingHand.Left => WorkingHand.Left,
        WorkingHand.Right => WorkingHand.Right,
        WorkingHand.Either when known.Is(OptionIds.PrecautionSideLeft) => WorkingHand.Right,
        WorkingHand.Either when known.Is(OptionIds.PrecautionSideRight) => WorkingHand.Left,
        _ => null,
    };
}
