namespace ToiletAid.Core.Knowledge;

/// <summary>How often what is said to come first did come first once everything was asked.</summary>
/// <param name="Outlook">Of the first kind of an outlook, by the share of likely people and weightings for which it is first.</param>
/// <param name="Shortlist">Of the first place of a shortlist, by the share of drawn people and weightings for which it is first.</param>
public sealed record CertaintyModel(CertaintyByDepth Outlook, CertaintyByDepth Shortlist);
