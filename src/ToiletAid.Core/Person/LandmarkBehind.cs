namespace ToiletAid.Core.Person;

/// <summary>Highest point that the hand gets to behind the back.</summary>
public enum LandmarkBehind
{
    /// <summary>Not past the hip.</summary>
    NotPastTheHip,

    /// <summary>Outer buttock.</summary>
    OuterButtock,

    /// <summary>The cleft between the buttocks.</summary>
    TheCleft,

    /// <summary>Tailbone.</summary>
    Tailbone,

    /// <summary>Waist or above.</summary>
    WaistOrAbove,
}
