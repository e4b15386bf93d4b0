namespace ToiletAid.Core.Person;

/// <summary>How far the hand gets between the thighs.</summary>
public enum LandmarkFront
{
    /// <summary>Not past mid-thigh.</summary>
    NotPastMidThigh,

    /// <summary>To the groin.</summary>
    Groin,

    /// <summary>Past the groin.</summary>
    PastTheGroin,
}
