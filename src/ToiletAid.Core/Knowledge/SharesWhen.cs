using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>Other shares of the options of a question, where an earlier answer makes some of them plain nonsense.</summary>
/// <param name="Question">Id of the earlier question.</param>
/// <param name="Is">Answers to it for which these shares hold.</param>
/// <param name="Shares">Shares by option; options left out are not drawn.</param>
public sealed record SharesWhen(QuestionId Question, ImmutableArray<string> Is, ImmutableSortedDictionary<string, double> Shares);
