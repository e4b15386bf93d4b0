using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Interview;

/// <summary>A condition on an earlier answer. While that answer is missing or not known, the clause holds: the question is still open.</summary>
/// <param name="Question">Id of the earlier question.</param>
/// <param name="Is">The clause holds when the answer is one of these; null where not used.</param>
/// <param name="IsNot">The clause holds when the answer is none of these; null where not used.</param>
/// <param name="Known">Other than the rest, the clause holds only when the answer is known and is, or holds, one of these; null where not used.</param>
public sealed record Clause(QuestionId Question, ImmutableArray<string>? Is = null, ImmutableArray<string>? IsNot = null, ImmutableArray<string>? Known = null);
