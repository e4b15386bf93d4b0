namespace ToiletAid.Core.Water;

/// <summary>How a time is meant.</summary>
public enum BurnBound
{
    /// <summary>Longer than the time given.</summary>
    MoreThan,

    /// <summary>About the time given.</summary>
    About,

    /// <summary>Shorter than the time given.</summary>
    LessThan,
}
