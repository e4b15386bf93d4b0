namespace ToiletAid.Core.Catalogue;

/// <summary>What meets the skin, under the paper if there is any.</summary>
public enum Tip
{
    /// <summary>Fingers.</summary>
    Fingers,

    /// <summary>A soft head.</summary>
    Soft,

    /// <summary>A hard tip or edge.</summary>
    Hard,

    /// <summary>A jet of water.</summary>
    Water,
}
