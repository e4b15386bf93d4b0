namespace ToiletAid.Core.Evidence;

/// <summary>Where a number comes from; decides how far it may be trusted.</summary>
public enum Basis
{
    /// <summary>Read in the cited publication.</summary>
    Published,

    /// <summary>Known to everybody in the trade; no source needed.</summary>
    CommonPractice,

    /// <summary>A placeholder until somebody measures it.</summary>
    Estimate,

    /// <summary>Recalled from a publication and not read; to be verified.</summary>
    FromMemory,

    /// <summary>Chosen by this project.</summary>
    Decision,

    /// <summary>Measured or set here, with the aid in hand.</summary>
    Measured,

    /// <summary>Counted by this program over simulated people; the source is the command that counts again.</summary>
    Computed,
}
