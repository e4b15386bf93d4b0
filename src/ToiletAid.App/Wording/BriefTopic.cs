namespace ToiletAid.App.Wording;

/// <summary>What a sentence of the brief result is about.</summary>
public enum BriefTopic
{
    /// <summary>What must be heard before anything is tried.</summary>
    Warning,

    /// <summary>The plan.</summary>
    Plan,

    /// <summary>How sure it is, and what comes next to it.</summary>
    Certainty,

    /// <summary>Why this plan.</summary>
    Reason,

    /// <summary>What to look out for.</summary>
    Caution,

    /// <summary>What is not known and whether it matters.</summary>
    Unknown,

    /// <summary>What to do next.</summary>
    Next,
}
