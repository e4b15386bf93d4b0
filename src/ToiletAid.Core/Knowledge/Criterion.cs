namespace ToiletAid.Core.Knowledge;

/// <summary>What plans are compared on. Every value runs from 0 to 1.</summary>
public enum Criterion
{
    /// <summary>1 the plan is certainly long enough, 0 it certainly is not.</summary>
    Reach,

    /// <summary>1 every step is easy for the hand or none is left to it, 0 it cannot do one of them.</summary>
    Handling,

    /// <summary>1 the skin is clean and dry, 0 nothing is gained.</summary>
    Cleaning,

    /// <summary>1 no risk to the skin, 0 harm is to be expected.</summary>
    Skin,

    /// <summary>1 nothing soiled is touched and everything is easily disinfected, 0 the opposite.</summary>
    Contact,

    /// <summary>1 nothing to remember, 0 more than the person can follow.</summary>
    Learning,

    /// <summary>1 no burden to carry and not noticed, 0 cannot be taken along or draws every eye.</summary>
    Carrying,

    /// <summary>1 costs nothing to keep, 0 beyond means.</summary>
    Upkeep,

    /// <summary>1 nobody else is needed, 0 another person does all of it.</summary>
    Independence,
}
