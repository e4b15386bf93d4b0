namespace ToiletAidTui.Screens;

/// <summary>Why a front end stopped.</summary>
internal enum Ending
{
    /// <summary>It has not.</summary>
    None,

    /// <summary>The person goes on in the other mode.</summary>
    OtherMode,

    /// <summary>The person left.</summary>
    Left,

    /// <summary>A signal came, or the terminal was lost.</summary>
    Stopped,
}
