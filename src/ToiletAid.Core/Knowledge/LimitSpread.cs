namespace ToiletAid.Core.Knowledge;

/// <summary>Why a limit of change is not one number.</summary>
public enum LimitSpread
{
    /// <summary>It is one number.</summary>
    None,

    /// <summary>Smaller when the same person measured both times.</summary>
    Rater,

    /// <summary>Smaller for the dominant hand.</summary>
    Hand,

    /// <summary>It differs from movement to movement and from study to study.</summary>
    Movement,
}
