namespace ToiletAid.Core.Person;

/// <summary>How much is asked.</summary>
public enum Depth
{
    /// <summary>About ten questions, answered by observation.</summary>
    Quick,

    /// <summary>Everything that can matter.</summary>
    Full,

    /// <summary>Full, with goniometer, dynamometer, peg test and tape.</summary>
    Measured,
}
