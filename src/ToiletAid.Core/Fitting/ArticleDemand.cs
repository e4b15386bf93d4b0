using System.Collections.Immutable;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Fitting;

/// <summary>What an article must be like to suit one person in one plan.</summary>
/// <param name="Plan">The plan: what is bought is its cleaning method, and the article that is used after it.</param>
/// <param name="IsFirst">True when the plan is first, so that wishes keep it there; false when they would put it there.</param>
/// <param name="UsableShare">Share of the people who would give these answers that can use the plan with an article as the kind usually is, 0 to 1.</param>
/// <param name="Musts">Without these it does not work, what fails most often first.</param>
/// <param name="Wishes">Without these something else suits better, what fails most often first.</param>
/// <param name="LeftOut">How many further lines there would be, which fewer articles fail.</param>
public sealed record ArticleDemand(Plan Plan, bool IsFirst, double UsableShare, ImmutableArray<ArticleLine> Musts, ImmutableArray<ArticleLine> Wishes, int LeftOut)
{
    /// <summary>Most lines, musts and wishes of both articles together (decision: as many as are read out in a shop).</summary>
    public const int MostLines = 8;

    /// <summary>What the article must have that is used after it, to dry or to finish, what fails most often first; empty where it is none or nothing matters.</summary>
    public ImmutableArray<ArticleLine> After { get; init; } = [];

    /// <summary>Musts, those of the article that is used after it, then wishes.</summary>
    public ImmutableArray<ArticleLine> Lines => [.. Musts, .. After, .. Wishes];
}
