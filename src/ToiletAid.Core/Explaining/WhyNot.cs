using System.Collections.Immutable;

namespace ToiletAid.Core.Explaining;

/// <summary>What would put a plan first.</summary>
/// <param name="Aid">Id of the method.</param>
/// <param name="IsFirst">True when it is first already.</param>
/// <param name="Changes">The smallest change of one answer, or of two, that puts it first; empty when none of those looked at does.</param>
/// <param name="Tried">How many changes were looked at.</param>
public sealed record WhyNot(string Aid, bool IsFirst, ImmutableArray<AnswerChange> Changes, int Tried);
