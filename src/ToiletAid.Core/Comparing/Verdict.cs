namespace ToiletAid.Core.Comparing;

/// <summary>Whether a difference between two visits is a change of the person.</summary>
public enum Verdict
{
    /// <summary>More than the error of finding out.</summary>
    Real,

    /// <summary>No more than the error of finding out.</summary>
    WithinError,

    /// <summary>It cannot be told.</summary>
    Unknown,
}
