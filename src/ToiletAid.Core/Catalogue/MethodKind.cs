namespace ToiletAid.Core.Catalogue;

/// <summary>How a method cleans.</summary>
public enum MethodKind
{
    /// <summary>Wipes with paper or a cloth.</summary>
    Wipe,

    /// <summary>Washes with water and leaves the skin wet.</summary>
    Wash,

    /// <summary>Washes and dries.</summary>
    WashAndDry,

    /// <summary>Another person cleans.</summary>
    Helper,
}
