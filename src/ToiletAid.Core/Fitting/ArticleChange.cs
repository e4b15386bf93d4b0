namespace ToiletAid.Core.Fitting;

/// <summary>One change of an article with which it would fit.</summary>
/// <param name="Trait">What would be different: for what is not a number, that it has it.</param>
/// <param name="Is">The number now, SI; null for what is not a number.</param>
/// <param name="Needed">The nearest number that would do, SI; null for what is not a number.</param>
public sealed record ArticleChange(ArticleTrait Trait, double? Is, double? Needed);
