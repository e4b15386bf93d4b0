namespace ToiletAid.Core.Person;

/// <summary>Handling small things.</summary>
public enum Dexterity
{
    /// <summary>As usual for the age.</summary>
    Usual,

    /// <summary>Slow.</summary>
    Slow,

    /// <summary>Cannot.</summary>
    Cannot,
}
