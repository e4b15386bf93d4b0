namespace ToiletAid.Core.Outcomes;

/// <summary>An answer or a number with which tries failed more often than was predicted.</summary>
/// <param name="Question">Id of the question; empty for a predicted criterion.</param>
/// <param name="Part">Id of its part, or the word of the criterion; null for the whole.</param>
/// <param name="Option">The option that was answered; null for a number.</param>
/// <param name="Below">The number lay below this, in the question's first unit; null for the other side and for an option.</param>
/// <param name="From">The number was this or more; null for the other side and for an option.</param>
/// <param name="People">First tries with this answer.</param>
/// <param name="Failed">How many of them failed.</param>
/// <param name="Expected">How many of them were predicted to fail.</param>
/// <param name="ByChance">How likely as much would be by chance with all that was looked at, at most; 0 to 1.</param>
public sealed record Sign(string Question, string? Part, string? Option, double? Below, double? From, long People, long Failed, double Expected, double ByChance);
