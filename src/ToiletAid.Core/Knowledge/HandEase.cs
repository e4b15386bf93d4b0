namespace ToiletAid.Core.Knowledge;

/// <summary>How an add-on makes a step easier for the hand.</summary>
public enum HandEase
{
    /// <summary>It holds the aid to the hand.</summary>
    HoldsTheHand,

    /// <summary>It takes less grip.</summary>
    EasesGrip,

    /// <summary>Paper is got ready ahead.</summary>
    PreparesPaper,
}
