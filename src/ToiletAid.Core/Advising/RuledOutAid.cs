using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Advising;

/// <summary>A method of which no plan can be offered.</summary>
/// <param name="Aid">The method.</param>
/// <param name="Plan">The plan that came closest.</param>
/// <param name="Reasons">What rules that plan out, the plainest first; at least one.</param>
public sealed record RuledOutAid(Aid Aid, Plan Plan, ImmutableArray<Finding> Reasons);
