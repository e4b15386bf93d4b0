namespace ToiletAid.App.Pictures;

/// <summary>What carries the person.</summary>
internal enum Support
{
    /// <summary>A toilet, cut open.</summary>
    Toilet,

    /// <summary>A commode chair, its pan cut open.</summary>
    Commode,

    /// <summary>A bed from the side, its back raised.</summary>
    Bed,

    /// <summary>A bed from above.</summary>
    BedFromAbove,

    /// <summary>A chair that is tilted back.</summary>
    TiltedChair,
}
