namespace ToiletAid.Core.Ranking;

/// <summary>What it means that a person puts two criteria in the same place.</summary>
public enum TieMeaning
{
    /// <summary>They matter equally: their weights are the same number.</summary>
    EqualWeights,

    /// <summary>The person does not say which of them comes first: either may have the larger weight.</summary>
    EitherFirst,
}
