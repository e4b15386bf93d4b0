using System.Collections.Immutable;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Articles;

/// <summary>What can be said of an article at the end of the questions.</summary>
/// <param name="Facts">What is known of it.</param>
/// <param name="Outlook">The verdict, and how certain it is.</param>
public sealed record ArticleResult(ArticleFacts Facts, ArticleOutlook Outlook)
{
    /// <summary>Changes of one thing, each of which would make it fit.</summary>
    public required ImmutableArray<ArticleChange> WouldFit { get; init; }

    /// <summary>Two changes that make it fit together, where no single one does; else empty.</summary>
    public required ImmutableArray<ArticleChange> Together { get; init; }

    /// <summary>True when a plan with it comes first among all kinds.</summary>
    public required bool ComesFirst { get; init; }

    /// <summary>The plan that comes first without it; null where none can be offered.</summary>
    public required Plan? First { get; init; }

    /// <summary>All that can be found out about such an article.</summary>
    public required ImmutableArray<ArticleTrait> Traits { get; init; }
}
