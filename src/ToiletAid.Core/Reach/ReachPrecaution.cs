namespace ToiletAid.Core.Reach;

/// <summary>A precaution that forbids postures or joint angles.</summary>
public enum ReachPrecaution
{
    /// <summary>The hip must not flex past its limit (fresh hip operation).</summary>
    HipFlexionLimit,

    /// <summary>No twisting or bending (spine).</summary>
    NoTwistingOrBending,

    /// <summary>Sternal precautions (fresh breastbone operation).</summary>
    Sternal,

    /// <summary>Fresh shoulder operation on the working side.</summary>
    ShoulderSurgery,

    /// <summary>No weight through the hand.</summary>
    NoWeightThroughHand,
}
