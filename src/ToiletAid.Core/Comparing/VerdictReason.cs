namespace ToiletAid.Core.Comparing;

/// <summary>What a verdict rests on.</summary>
public enum VerdictReason
{
    /// <summary>The difference reaches the limit.</summary>
    ReachesLimit,

    /// <summary>The difference stays below the limit.</summary>
    BelowLimit,

    /// <summary>The difference lies between two limits, and it is not known which one holds.</summary>
    BetweenLimits,

    /// <summary>No limit of change is known for it.</summary>
    NoLimit,

    /// <summary>The limits hold for measurements, and at one visit it was not measured.</summary>
    NotMeasured,

    /// <summary>There is an answer at only one of the visits.</summary>
    OneVisitOnly,

    /// <summary>A fact or a wish, which is as it was said.</summary>
    Stated,

    /// <summary>No more options away than seeing or telling may be wrong by.</summary>
    FewSteps,

    /// <summary>More options away than seeing or telling may be wrong by.</summary>
    ManySteps,

    /// <summary>The answer is the same and was obtained in another way.</summary>
    OtherWay,
}
