using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Plans;

/// <summary>One person as they may be: every answer settled and a strength drawn.</summary>
/// <param name="View">The person as the criteria see them.</param>
/// <param name="Hand">The hand.</param>
/// <param name="Strength">Strength of the hand.</param>
/// <param name="Draw">Number of the reach draw, 0 or more; null for the middle case, in which reach is a probability.</param>
/// <param name="Numbers">Numbers of aids, hands and other evidence that plans are valued by for them.</param>
internal sealed record DrawnPerson(PersonView View, KnownHand Hand, HandStrength Strength, int? Draw, NumberSet Numbers);
