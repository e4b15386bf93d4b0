namespace ToiletAid.Core.Knowledge;

/// <summary>How serious a caution is, most serious first.</summary>
public enum Severity
{
    /// <summary>Act now.</summary>
    Urgent,

    /// <summary>Harm is likely without care.</summary>
    High,

    /// <summary>Harm is possible without care.</summary>
    Moderate,

    /// <summary>Worth knowing.</summary>
    Note,
}
