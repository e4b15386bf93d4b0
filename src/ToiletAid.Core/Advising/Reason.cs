using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Advising;

/// <summary>What a criterion brings to a plan's lead over another.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Contribution">Share of the lead, in value; the contributions of all criteria add up to the lead among these persons.</param>
/// <param name="Value">The plan's value on it, mean of the persons who can use both plans.</param>
/// <param name="Other">The other plan's value on it, mean of the same persons.</param>
public sealed record Reason(Criterion Criterion, double Contribution, double Value, double Other);
