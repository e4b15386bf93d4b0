namespace ToiletAid.Core.Person;

/// <summary>Sex as used by the norm tables and for the direction of wiping.</summary>
public enum Sex
{
    /// <summary>Female.</summary>
    Female,

    /// <summary>Male.</summary>
    Male,

    /// <summary>Unstated: norms are averaged over both.</summary>
    Unstated,
}
