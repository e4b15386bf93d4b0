namespace ToiletAid.App.Sessions;

/// <summary>What speaks against the day of a visit.</summary>
public enum DayDoubt
{
    /// <summary>It has not come yet.</summary>
    AfterToday,

    /// <summary>There is a visit of a later day.</summary>
    Earlier,

    /// <summary>There is a visit of a day that has not come yet: either its day is wrong or the clock.</summary>
    LaterVisit,
}
