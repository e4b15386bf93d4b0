namespace ToiletAid.Core.Person;

/// <summary>Tremor of the hand used for cleaning.</summary>
public enum Tremor
{
    /// <summary>None.</summary>
    None,

    /// <summary>Some.</summary>
    Some,

    /// <summary>Marked.</summary>
    Marked,
}
