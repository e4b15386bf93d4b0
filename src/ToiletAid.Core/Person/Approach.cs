namespace ToiletAid.Core.Person;

/// <summary>The way by which hand or aid comes to the skin to be cleaned.</summary>
public enum Approach
{
    /// <summary>From behind, around the hip.</summary>
    Behind,

    /// <summary>From the front, between the thighs.</summary>
    Front,

    /// <summary>From the side, leaning off one buttock.</summary>
    Side,
}
