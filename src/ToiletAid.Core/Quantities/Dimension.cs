namespace ToiletAid.Core.Quantities;

/// <summary>What a unit measures.</summary>
public enum Dimension
{
    /// <summary>Length, SI unit m.</summary>
    Length,

    /// <summary>Mass, SI unit kg.</summary>
    Mass,

    /// <summary>Force, SI unit N.</summary>
    Force,

    /// <summary>Plane angle, SI unit rad.</summary>
    Angle,

    /// <summary>Time, SI unit s.</summary>
    Time,

    /// <summary>Temperature, kept in °C.</summary>
    Temperature,

    /// <summary>Volume, SI unit m³.</summary>
    Volume,

    /// <summary>Flow, SI unit m³/s.</summary>
    Flow,

    /// <summary>A plain number: a count, a share, years, an amount of money.</summary>
    Number,
}
