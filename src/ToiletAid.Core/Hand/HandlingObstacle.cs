namespace ToiletAid.Core.Hand;

/// <summary>Why an operation cannot be done.</summary>
public enum HandlingObstacle
{
    /// <summary>It can.</summary>
    None,

    /// <summary>It takes two hands and one is free.</summary>
    NeedsTwoHands,

    /// <summary>It takes much handling of small things, which the hand cannot do.</summary>
    NeedsFineHandling,

    /// <summary>None of the grasps that can do it is usable.</summary>
    NoUsableGrasp,

    /// <summary>It takes too much of the hand's strength.</summary>
    TooWeak,
}
