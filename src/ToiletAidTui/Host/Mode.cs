namespace ToiletAidTui.Host;

/// <summary>The two ways in which the program talks with a person.</summary>
internal enum Mode
{
    /// <summary>Line by line.</summary>
    Linear,

    /// <summary>On the whole terminal.</summary>
    FullScreen,
}
