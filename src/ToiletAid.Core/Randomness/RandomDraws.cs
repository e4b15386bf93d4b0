using System.Runtime.InteropServices;

namespace ToiletAid.Core.Randomness;

/// <summary>A seeded stream of random numbers: same seed and same stream number, same bits on every machine.</summary>
/// <remarks>xoshiro256** by Blackman and Vigna (2018, public domain), state filled by splitmix64. One stream for each uncertain
/// thing keeps the numbers of the others where they are when something is added (common random numbers).</remarks>
[StructLayout(LayoutKind.Auto)]
public struct RandomDraws
{
    /// <summary>The greatest number below 1.</summary>
    internal const double BelowOne = 1 - (1.0 / (1UL << 53));

    private ulong _s0;
    private ulong _s1;
    private ulong _s2;
    private ulong _s3;

    /// <summary>Makes a stream.</summary>
    /// <param name="seed">Seed of the whole run.</param>
    /// <param name="stream">Number of the stream.</param>
    public RandomDraws(ulong seed, ulong stream)
    {
        ulong x = SplitMix(seed) ^ SplitMix(stream + 0x9E3779B97F4A7C15UL);
        _s0 = SplitMix(x);
        _s1 = SplitMix(x + 0x9E3779B97F4A7C15UL);
        _s2 = SplitMix(_s0 ^ _s1);
        _s3 = SplitMix(_s1 + _s2);
    }

    /// <summary>The next 64 bits.</summary>
    public ulong NextBits()
    {
        ulong result = ulong.RotateLeft(_s1 * 5, 7) * 9;
        ulong t = _s1 << 17;
        _s2 ^= _s0;
        _s3 ^= _s1;
        _s1 ^= _s2;
        _s0 ^= _s3;
        _s2 ^= t;
        _s3 = ulong.RotateLeft(_s3, 45);
        return result;
    }

    /// <summary>A number above 0 and below 1, evenly spread.</summary>
    public double NextUniform() => Uniform(NextBits());

    /// <summary>A standard normal deviate (Box and Muller 1958).</summary>
    public double NextNormal() =>
        Math.Sqrt(-2 * Math.Log(NextUniform())) * Math.Cos(2 * Math.PI * NextUniform());

    /// <summary>A standard exponential deviate.</summary>
    public double NextExponential() => -Math.Log(NextUniform());

    /// <summary>The middle of one of 2⁵³ equal parts. The middle of the last one is rounded up to 1, which has no quantile and no end of a wait.</summary>
    internal static double Uniform(ulong bits)
    {
        double part = ((bits >> 11) + 0.5) * (1.0 / (1UL << 53));
        return part < 1 ? part : BelowOne;
    }

    private static ulong SplitMix(ulong x)
    {
        x += 0x9E3779B97F4A7C15UL;
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9UL;
        x = (x ^ (x >> 27)) * 0x94D049BB133111EBUL;
        return x ^ (x >> 31);
    }
}
