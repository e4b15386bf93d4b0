namespace ToiletAid.App.Files;

/// <summary>What the hash in a profile says about it.</summary>
public enum Seal
{
    /// <summary>It has no hash: it was not written by the store.</summary>
    None,

    /// <summary>It is as the store wrote it.</summary>
    Whole,

    /// <summary>It was changed by something else since.</summary>
    Changed,
}
