namespace ToiletAid.Core.Person;

/// <summary>Best usable grasp, finest first.</summary>
public enum Grasp
{
    /// <summary>Fine pinch between thumb and finger.</summary>
    FinePinch,

    /// <summary>Whole hand around a handle.</summary>
    WholeHand,

    /// <summary>Press with palm or fist.</summary>
    PressWithPalmOrFist,

    /// <summary>Press with the forearm.</summary>
    PressWithForearm,

    /// <summary>None.</summary>
    None,
}
