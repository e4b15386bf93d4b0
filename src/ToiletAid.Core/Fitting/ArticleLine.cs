namespace ToiletAid.Core.Fitting;

/// <summary>One thing to look for in an article.</summary>
/// <param name="Trait">What it is about.</param>
/// <param name="IsMust">True when the plan is ruled out beyond it, fails for too many people like this, or breaks what a rule warns of; false when it is only no longer first.</param>
public sealed record ArticleLine(ArticleTrait Trait, bool IsMust)
{
    /// <summary>True for at least, false for at most; for what it has or has not always true.</summary>
    public bool AtLeast { get; init; } = true;

    /// <summary>The last number, SI, on the good side; null for what it has or has not, where only <see cref="Sure"/> binds, or where a rule's limit is not known yet.</summary>
    public double? Limit { get; init; }

    /// <summary>The next number, SI, which is on the bad side; null without a limit, and for a rule's limit.</summary>
    public double? Beyond { get; init; }

    /// <summary>The last number, SI, with which it works for most people who would give these answers; null where it binds no more than the limit, or nothing is enough.</summary>
    public double? Sure { get; init; }

    /// <summary>The next number, SI, with which it works for fewer; null without <see cref="Sure"/>.</summary>
    public double? BeyondSure { get; init; }

    /// <summary>Share of the kind's own range that lies on the bad side, 0 to 1; below 0 when the bound lies outside that range.</summary>
    public required double Fails { get; init; }
}
