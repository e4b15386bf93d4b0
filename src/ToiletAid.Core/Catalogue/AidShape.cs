namespace ToiletAid.Core.Catalogue;

/// <summary>Shape of a handle.</summary>
public enum AidShape
{
    /// <summary>Straight: cannot follow the body's curve and pays for it in length.</summary>
    Straight,

    /// <summary>Curved, or jointed so that it can be set to a curve.</summary>
    Curved,
}
