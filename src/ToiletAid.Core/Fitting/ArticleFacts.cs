using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Fitting;

/// <summary>What is known of an article: its kind, what was measured or looked up, and what could not be.</summary>
/// <param name="Kind">The kind that it resembles.</param>
public sealed record ArticleFacts(Aid Kind)
{
    /// <summary>What was measured, SI.</summary>
    public ImmutableDictionary<ArticleTrait, double> Numbers { get; init; } = ImmutableDictionary<ArticleTrait, double>.Empty;

    /// <summary>What was looked up.</summary>
    public ImmutableDictionary<ArticleTrait, bool> Features { get; init; } = ImmutableDictionary<ArticleTrait, bool>.Empty;

    /// <summary>What was asked for and is not known.</summary>
    public ImmutableHashSet<ArticleTrait> NotKnown { get; init; } = [];

    /// <summary>With a number.</summary>
    /// <param name="trait">What was measured.</param>
    /// <param name="si">The number, SI.</param>
    public ArticleFacts With(ArticleTrait trait, double si) => this with { Numbers = Numbers.SetItem(trait, si), NotKnown = NotKnown.Remove(trait) };

    /// <summary>With something that it has or has not.</summary>
    /// <param name="trait">What was looked up.</param>
    /// <param name="has">True when it has it.</param>
    public ArticleFacts With(ArticleTrait trait, bool has) => this with { Features = Features.SetItem(trait, has), NotKnown = NotKnown.Remove(trait) };

    /// <summary>Without what cannot be found out.</summary>
    /// <param name="trait">What was asked for.</param>
    public ArticleFacts Without(ArticleTrait trait) => this with { Numbers = Numbers.Remove(trait), Features = Features.Remove(trait), NotKnown = NotKnown.Add(trait) };

    /// <summary>True when it was measured or looked up.</summary>
    /// <param name="trait">What is asked about.</param>
    public bool Knows(ArticleTrait trait) => Numbers.ContainsKey(trait) || Features.ContainsKey(trait);

    /// <summary>The article where the rest is as the kind usually is.</summary>
    public Aid Usual() => Over(Kind);

    /// <summary>The article over another one of its kind.</summary>
    /// <param name="rest">What the rest is taken from.</param>
    internal Aid Over(Aid rest)
    {
        foreach (var (trait, si) in Numbers)
        {
            rest = trait.With(rest, si);
        }

        foreach (var (trait, has) in Features)
        {
            rest = trait.With(rest, has);
        }

        return rest;
    }
}
