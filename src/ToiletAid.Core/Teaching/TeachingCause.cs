namespace ToiletAid.Core.Teaching;

/// <summary>What the effect of an answer on a kind rests on.</summary>
public enum TeachingCause
{
    /// <summary>A rule that rules this kind out: for the people with the answer, or for the others where the answer speaks for it.</summary>
    Itself,

    /// <summary>A rule that rules other kinds out for the people with the answer.</summary>
    Others,

    /// <summary>A criterion on which the answer moves it most against the best other kind.</summary>
    Criterion,
}
