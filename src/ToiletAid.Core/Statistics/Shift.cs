using System.Runtime.InteropServices;

namespace ToiletAid.Core.Statistics;

/// <summary>How far something lies from what was predicted, as it is believed after shrinkage.</summary>
/// <param name="Mean">Most plausible shift; 0 where the prediction holds.</param>
/// <param name="Variance">Its variance, above 0.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Shift(double Mean, double Variance)
{
    /// <summary>The interval that holds it with a probability.</summary>
    /// <param name="probability">Above 0 and below 1.</param>
    public Interval Interval(double probability)
    {
        double half = Randomness.StandardNormal.Quantile((1 + probability) / 2) * Math.Sqrt(Variance);
        return new(Mean - half, Mean + half);
    }

    /// <summary>Several beliefs, of which one holds, as one with the same mean and variance.</summary>
    /// <param name="beliefs">Each with its probability; they add up to 1.</param>
    internal static Shift Mixed(IReadOnlyCollection<(double Probability, Shift Shift)> beliefs)
    {
        double mean = beliefs.Sum(b => b.Probability * b.Shift.Mean);
        return new(mean, beliefs.Sum(b => b.Probability * (b.Shift.Variance + ((b.Shift.Mean - mean) * (b.Shift.Mean - mean)))));
    }
}
