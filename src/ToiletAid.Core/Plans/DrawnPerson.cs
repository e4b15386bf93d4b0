using ToiletAid.Core.Hand;

namespace ToiletAid.Core.Plans;

/// <summary>One person as they may be: every answer settled and a strength drawn.</summary>
/// <param name="Case">The person but for the strength of the hand.</param>
/// <param name="Hand">The hand.</param>
/// <param name="Strength">Strength of the hand.</param>
internal sealed record DrawnPerson(DrawnCase Case, KnownHand Hand, HandStrength Strength)
{
    /// <summary>The person as the criteria see them.</summary>
    internal PersonView View => Case.View;

    /// <summary>Number of the reach draw, 0 or more; null for the middle case, in which reach is a probability.</summary>
    internal int? Draw => Case.Draw;

    /// <summary>Numbers of aids, hands and other evidence that plans are valued by for them.</summary>
    internal NumberSet Numbers => Case.Numbers;
}
