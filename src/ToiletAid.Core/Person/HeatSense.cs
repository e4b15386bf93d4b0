namespace ToiletAid.Core.Person;

/// <summary>Whether heat would be noticed.</summary>
public static class HeatSense
{
    /// <summary>True when the skin or the hands do not feel heat well, or nobody knows whether the skin does.</summary>
    /// <param name="known">Answers as given.</param>
    public static bool MayBePoor(Answers known) =>
        known.Choice("feeling") != "usual" || (known.Many("conditions") is { } conditions && conditions.Contains("heat-not-felt-by-the-hand"));
}
