namespace ToiletAid.Core.Person;

/// <summary>Whether heat would be noticed.</summary>
public static class HeatSense
{
    /// <summary>True when the skin or the hands do not feel heat well, or nobody knows whether the skin does.</summary>
    /// <param name="known">Answers as given.</param>
    public static bool MayBePoor(Answers known) =>
        !known.Is(OptionIds.FeelingUsual) || known.Has(OptionIds.ConditionHeatNotFeltByTheHand);

    /// <summary>True when the skin may burn sooner than that of others, or not be felt to: then the water is kept cooler.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="old">Years above which skin burns sooner.</param>
    public static bool BurnsSooner(Answers known, double old) => MayBePoor(known) || known.Si(QuestionIds.Age) > old;
}
