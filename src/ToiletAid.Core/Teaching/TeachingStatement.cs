using System.Collections.Immutable;

namespace ToiletAid.Core.Teaching;

/// <summary>What an answer does to a kind, counted over simulated people.</summary>
/// <param name="Question">Id of the question.</param>
/// <param name="Options">Ids of its options that do it; a person with any of them counts.</param>
/// <param name="By">What it rests on.</param>
/// <param name="Because">Id of the rule, or the criterion.</param>
/// <param name="Count">The people.</param>
public sealed record TeachingStatement(string Question, ImmutableArray<string> Options, TeachingCause By, string Because, HitCount Count);
