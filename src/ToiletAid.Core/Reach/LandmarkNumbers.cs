using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Reach;

/// <summary>Where the landmarks lie that a hand is asked to get to; angles of the ellipse of the pelvis in rad, other places as shares of its
/// half-axes.</summary>
/// <param name="numbers">Gives them by id.</param>
internal sealed class LandmarkNumbers(NumberTable numbers)
{
    /// <summary>How near the fingertips must come, m.</summary>
    public double NearEnough { get; } = numbers.Value("landmark.near-enough");

    /// <summary>Share of the usual range by which those who pass the highest landmark differ from it, either way.</summary>
    public double UsualSpread { get; } = numbers.Value("landmark.usual-spread");

    public double TailboneAboveMiddle { get; } = numbers.Value("landmark.tailbone.above-middle");

    public double CleftAboveMiddle { get; } = numbers.Value("landmark.cleft.above-middle");

    public double OuterButtockSideways { get; } = numbers.Value("landmark.outer-buttock.sideways");

    public double OuterButtockAboveMiddle { get; } = numbers.Value("landmark.outer-buttock.above-middle");

    public double GroinBeforeHip { get; } = numbers.Value("landmark.groin.before-hip");

    public double GroinBelowHip { get; } = numbers.Value("landmark.groin.below-hip");

    public double PastGroinBeforeLowest { get; } = numbers.Value("landmark.past-groin.before-lowest");
}
