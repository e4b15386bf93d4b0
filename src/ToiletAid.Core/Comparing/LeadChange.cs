using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Comparing;

/// <summary>How the lead of one kind of aid over another changed between two visits, and which answers changed it.</summary>
/// <param name="One">The kind that is first at the later visit.</param>
/// <param name="Other">The kind that was first before; the runner-up where the first place is the same.</param>
/// <param name="Before">Expected value of the one minus that of the other at the earlier visit, -1 to 1. A kind that is ruled out is worth 0.</param>
/// <param name="After">The same at the later visit.</param>
/// <param name="Movers">What changed it, greatest share first. The shares add up to the change.</param>
/// <param name="IsSampled">True when there were too many for every order, so that orders were sampled.</param>
public sealed record LeadChange(Aid One, Aid Other, double Before, double After, ImmutableArray<Mover> Movers, bool IsSampled);
