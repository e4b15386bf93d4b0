using ToiletAid.Core.Advising;

namespace ToiletAid.Core.Fitting;

/// <summary>One article, screened for one person.</summary>
/// <param name="Offer">The best plan with it that no rule forbids; null when there is none.</param>
/// <param name="UsableShare">Share of the people who would give these answers that can use that plan at all, 0 to 1; 0 without a plan.</param>
/// <param name="RuledOut">What speaks against the plan that came closest; null where one is allowed, or none can be made.</param>
internal sealed record ScreenedArticle(Offer? Offer, double UsableShare, RuledOutAid? RuledOut)
{
    /// <summary>True when no rule forbids it.</summary>
    internal bool Allowed => Offer is not null;
}
