using System.Collections.Immutable;

namespace ToiletAid.Core.Knowledge;

/// <summary>A computed share as it turned out among simulated people: a rising line of straight pieces.</summary>
/// <param name="Basis">What kind of knowledge it is.</param>
/// <param name="Source">How it was made.</param>
/// <param name="Computed">Computed shares, rising from 0 to 1.</param>
/// <param name="CameTrue">Shares that came true, not falling.</param>
public sealed record Calibration(Evidence.Basis Basis, string Source, ImmutableArray<double> Computed, ImmutableArray<double> CameTrue)
{
    /// <summary>The share that is said for a computed one.</summary>
    public double Of(double computed)
    {
        int i = 1;
        while (i < Computed.Length - 1 && computed > Computed[i])
        {
            i++;
        }

        double along = (Math.Clamp(computed, Computed[0], Computed[^1]) - Computed[i - 1]) / (Computed[i] - Computed[i - 1]);
        return CameTrue[i - 1] + (along * (CameTrue[i] - CameTrue[i - 1]));
    }
}
