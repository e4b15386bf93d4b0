using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Reach;

/// <summary>The random numbers of all draws: one stratified stream for each uncertain thing, so that the same draw is the same plausible
/// person in every posture and that adding a thing moves no other.</summary>
/// <remarks>Latin hypercube sampling (McKay, Beckman and Conover 1979): each stream visits each of n equal parts once.</remarks>
internal sealed class LatinHypercubeDraws
{
    public const int Joints = BodyModel.Deviates;
    public const int Behind = Joints + JointRanges.Count;
    public const int Front = Behind + 1;
    public const int LeanForward = Front + 1;
    public const int LeanSideways = LeanForward + 1;
    public const int Arms = LeanSideways + 1;
    public const int Count = Arms + 1;

    // Numbers of the streams. A new thing comes last, or every draw changes.
    private readonly double[] _shares;
    private readonly int _draws;

    public LatinHypercubeDraws(int draws, ulong seed)
    {
        _draws = draws;
        _shares = new double[Count * draws];
        double[] keys = new double[draws];
        int[] order = new int[draws];
        for (int thing = 0; thing < Count; thing++)
        {
            var stream = new RandomDraws(seed, (ulong)thing);
            for (int i = 0; i < draws; i++)
            {
                keys[i] = stream.NextUniform();
                order[i] = i;
            }

            Array.Sort(keys, order);
            for (int i = 0; i < draws; i++)
            {
                _shares[(thing * draws) + order[i]] = Within(i, stream.NextUniform(), draws);
            }
        }
    }

    /// <summary>Evenly spread number of one thing in one draw, above 0 and below 1.</summary>
    public double Share(int thing, int draw) => _shares[(thing * _draws) + draw];

    /// <summary>Standard normal deviate of one thing in one draw.</summary>
    public double Normal(int thing, int draw) => StandardNormal.Quantile(Share(thing, draw));

    /// <summary>A place within one of several equal parts. Rounding must not make it the end of the last one.</summary>
    internal static double Within(int part, double place, int parts) => Math.Min((part + place) / parts, RandomDraws.BelowOne);
}
