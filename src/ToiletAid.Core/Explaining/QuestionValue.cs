using System.Collections.Immutable;
using ToiletAid.Core.Interview;

namespace ToiletAid.Core.Explaining;

/// <summary>What asking a question may bring.</summary>
/// <param name="Question">The question.</param>
/// <param name="ChangeShare">Share of its expected answers that put another plan first, 0 to 1.</param>
/// <param name="Gain">Expected gain in value from knowing the answer before choosing, 0 or more.</param>
/// <param name="Rules">Rules about the best plans that cannot tell without it.</param>
/// <param name="SetsUp">True when the set-up of the first plan depends on it.</param>
public sealed record QuestionValue(Question Question, double ChangeShare, double Gain, ImmutableArray<string> Rules, bool SetsUp);
