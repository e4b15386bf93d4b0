namespace ToiletAid.Core.Catalogue;

/// <summary>How much handling of small things an operation asks for.</summary>
public enum FineHandling
{
    /// <summary>None: pressing or holding.</summary>
    None,

    /// <summary>Some: folding paper, placing it.</summary>
    Some,

    /// <summary>Much: tucking, threading, small parts.</summary>
    Much,
}
