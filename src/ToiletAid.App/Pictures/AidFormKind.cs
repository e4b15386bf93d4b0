namespace ToiletAid.App.Pictures;

/// <summary>What a kind of aid looks like at its working end, as far as its attributes tell.</summary>
internal enum AidFormKind
{
    /// <summary>The bare hand, with paper or a wipe.</summary>
    Hand,

    /// <summary>A handle with jaws that hold a pad.</summary>
    Jaws,

    /// <summary>A handle with a head into which both ends of the paper are tucked.</summary>
    TuckHead,

    /// <summary>A handle with a flat head that paper is wound round.</summary>
    WrapHead,

    /// <summary>Two arms that are squeezed together.</summary>
    Tongs,

    /// <summary>A handle whose head takes no paper.</summary>
    Head,

    /// <summary>A bottle that is squeezed.</summary>
    Bottle,

    /// <summary>A washer with a button.</summary>
    Washer,

    /// <summary>A nozzle on a hose.</summary>
    Hose,

    /// <summary>A washer under the seat.</summary>
    Seat,

    /// <summary>The gloved hand of another person.</summary>
    Glove,
}
