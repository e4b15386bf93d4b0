namespace ToiletAid.Core.Teaching;

/// <summary>Another kind that comes first for people who can use one.</summary>
/// <param name="Kind">Id of the other kind.</param>
/// <param name="First">People for whom it comes first.</param>
/// <param name="Because">The criterion on which it is furthest ahead of the one, on average over them.</param>
public sealed record TeachingOther(string Kind, int First, string Because);
