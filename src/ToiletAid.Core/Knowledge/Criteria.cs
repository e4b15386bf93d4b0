namespace ToiletAid.Core.Knowledge;

/// <summary>The criteria as an array holds them: one place for each <see cref="Criterion"/>, at its number.</summary>
internal static class Criteria
{
    /// <summary>How many there are.</summary>
    internal static readonly int Count = Enum.GetValues<Criterion>().Length;
}
