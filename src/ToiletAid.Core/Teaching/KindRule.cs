using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Teaching;

/// <summary>A rule that always applies to a kind of aid, for everybody or for people with some answers.</summary>
/// <param name="Finding">The rule with its numbers.</param>
/// <param name="Question">Id of the question whose answer brings it; null where it holds for everybody.</param>
/// <param name="Options">Ids of the options that bring it; <see cref="KindRules.High"/> for the highest number.</param>
public sealed record KindRule(Finding Finding, QuestionId? Question, ImmutableArray<string> Options);
