namespace ToiletAid.Core.Knowledge;

/// <summary>The criteria as an array holds them: one place for each <see cref="Criterion"/>, at its number.</summary>
internal static class Criteria
{
    /// <summary>How many there are.</summary>
    internal static readonly int Count = Enum.GetValues<Criterion>().Length;

    /// <summary>Those that depend on the plan and on answers alone: all but reach and handling.</summary>
    internal static readonly Criterion[] OfThePlan = [.. Enum.GetValues<Criterion>().Where(c => c is not (Criterion.Reach or Criterion.Handling))];
}
