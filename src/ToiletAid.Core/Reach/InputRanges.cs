using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Reach;

/// <summary>What is taken as an answer about a person; SI.</summary>
/// <param name="numbers">Gives them by id.</param>
internal sealed class InputRanges(NumberTable numbers)
{
    public double StatureLeast { get; } = numbers.Value("input.stature-least");

    public double StatureGreatest { get; } = numbers.Value("input.stature-greatest");

    public double MassLeast { get; } = numbers.Value("input.mass-least");

    public double MassGreatest { get; } = numbers.Value("input.mass-greatest");

    /// <summary>Years.</summary>
    public double AgeLeast { get; } = numbers.Value("input.age-least");

    /// <inheritdoc cref="AgeLeast"/>
    public double AgeGreatest { get; } = numbers.Value("input.age-greatest");

    public double LeanGreatest { get; } = numbers.Value("input.lean-greatest");

    public double JointGreatest { get; } = numbers.Value("input.joint-greatest");

    public double LengthLeast { get; } = numbers.Value("input.length-least");

    public double LengthGreatest { get; } = numbers.Value("input.length-greatest");
}
