namespace ToiletAid.Core.Catalogue;

/// <summary>How an aid takes its paper.</summary>
public enum PaperHold
{
    /// <summary>Held in the fingers or between two jaws as a folded pad.</summary>
    Pad,

    /// <summary>Wrapped round a head.</summary>
    Wrap,

    /// <summary>Laid over a head with its ends tucked in.</summary>
    Tuck,
}
