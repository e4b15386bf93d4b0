namespace ToiletAid.Core.Person;

/// <summary>How a plan was tried.</summary>
public enum RunKind
{
    /// <summary>Dry and clothed.</summary>
    Dry,

    /// <summary>For real, after using the toilet.</summary>
    Real,
}
