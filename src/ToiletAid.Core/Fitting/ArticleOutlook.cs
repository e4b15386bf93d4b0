using System.Collections.Immutable;

namespace ToiletAid.Core.Fitting;

/// <summary>What can be said of an article so far, and what to find out next.</summary>
/// <param name="Verdict">The verdict; where it is not certain, that of an article whose unknown rest is as the kind usually is.</param>
/// <param name="IsCertain">True when nothing that is not known, within the range of the kind, was found to change the verdict.</param>
/// <param name="Next">What is worth finding out next; null when the verdict is certain or nothing more can be found out.</param>
public sealed record ArticleOutlook(ArticleVerdict Verdict, bool IsCertain, ArticleTrait? Next)
{
    /// <summary>What was not found out and can change the verdict; empty when it is certain.</summary>
    public ImmutableArray<ArticleTrait> CanChange { get; init; } = [];
}
