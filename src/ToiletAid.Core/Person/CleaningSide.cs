namespace ToiletAid.Core.Person;

/// <summary>Which hand cleans, beside which side a precaution holds for.</summary>
public static class CleaningSide
{
    /// <summary>True when a precaution of an arm holds for one side only, and the hand that cleans is, or can be, the other one.</summary>
    /// <param name="known">Answers as given.</param>
    public static bool IsSpared(Answers known) => Hand(known) is not null && known.Choice("precaution-side") is "left" or "right" && Hand(known) != known.Choice("precaution-side");

    /// <summary>The hand that should clean, left or right; null where it is not known or either will do.</summary>
    /// <param name="known">Answers as given.</param>
    public static string? Hand(Answers known) => known.Choice("hand") switch
    {
        "left" => "left",
        "right" => "right",
        "either" when known.Choice("precaution-side") == "left" => "right",
        "either" when known.Choice("precaution-side") == "right" => "left",
        _ => null,
    };
}
