namespace ToiletAid.Core.Person;

/// <summary>The hand used for cleaning.</summary>
public enum WorkingHand
{
    /// <summary>Right.</summary>
    Right,

    /// <summary>Left.</summary>
    Left,

    /// <summary>Either.</summary>
    Either,
}
