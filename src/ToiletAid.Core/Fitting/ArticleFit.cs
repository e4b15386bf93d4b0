namespace ToiletAid.Core.Fitting;

/// <summary>Whether an article is right for a person.</summary>
public enum ArticleFit
{
    /// <summary>It works as it is.</summary>
    Fits,

    /// <summary>It works with something added, or when paper is let go against the body.</summary>
    FitsWith,

    /// <summary>A rule forbids every plan with it, or more people like this could not use it than could.</summary>
    DoesNotFit,
}
