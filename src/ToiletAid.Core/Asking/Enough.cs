namespace ToiletAid.Core.Asking;

/// <summary>Why nothing more is asked.</summary>
public enum Enough
{
    /// <summary>There is something to ask.</summary>
    Not,

    /// <summary>A red flag ends the interview.</summary>
    RedFlag,

    /// <summary>What more answers could add is below the limit.</summary>
    LittleLeft,

    /// <summary>As many questions as the depth takes were asked.</summary>
    Budget,

    /// <summary>Everything that can be asked was asked.</summary>
    AllAsked,
}
