using ToiletAid.Core.Randomness;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Papers;

/// <summary>Four drugs on six criteria of benefit and risk: Tervonen, van Valkenhoef, Buskens, Hillege and Postmus (2011), Statistics in
/// Medicine 30:1419 (title and authors from memory). Measurements and printed results were read in tommite/jsmaa at d00ae14,
/// models/smaa2-benefitrisk.jsmaa and SMAA2SimulationTest.java; the four-digit results come from a separate run of the definitions
/// with 2,000,000 draws, made apart from this program.</summary>
public sealed class Tervonen2011Tests
{
    private const int Draws = 100_000;

    /// <summary>Mean and standard deviation; of the logarithm for the first criterion, which alone is better when higher.</summary>
    private static readonly (double Mean, double Deviation)[][] Measured =
    [
        [(0, 0), (11.7, 2.5), (7.2, 1.45), (16.6, 3.27), (13.7, 1.89), (18.6, 1.79)],
        [(.086, .056), (9.2, 1.86), (10.6, 1.58), (21.2, 5.15), (14.3, 2.93), (18.3, 3.7)],
        [(.095, .044), (15.4, 2.65), (7.5, 1.48), (20.2, 3.78), (15.0, 3.21), (19.5, 2.6)],
        [(.113, .048), (5.5, 2.32), (15.7, 4.44), (12.8, 2.45), (11.2, 3.98), (31.0, 1.68)],
    ];

    private static readonly double[][] PrintedRanks =
        [[.20, .28, .30, .22], [.25, .29, .27, .19], [.17, .25, .29, .30], [.39, .18, .15, .29]];

    private static readonly double[][] LongRunRanks =
    [
        [.1955, .2812, .2993, .2240], [.2543, .2938, .2669, .1850], [.1691, .2433, .2861, .3015], [.3812, .1817, .1477, .2894],
    ];

    private static readonly double[][] PrintedCentral =
    [
        [.08, .14, .23, .18, .16, .22], [.18, .17, .15, .13, .15, .22], [.21, .10, .22, .13, .15, .20], [.18, .21, .12, .21, .19, .09],
    ];

    private static readonly double[][] LongRunCentral =
    [
        [.0760, .1356, .2364, .1799, .1594, .2127],
        [.1803, .1690, .1493, .1262, .1519, .2232],
        [.2083, .0944, .2222, .1316, .1492, .1944],
        [.1853, .2131, .1177, .2025, .1881, .0933],
    ];

    private static readonly double[] PrintedConfidence = [.48, .44, .34, .74], LongRunConfidence = [.4850, .4435, .3480, .7306];

    private static readonly AcceptabilityResult Result =
        Acceptability.Of(Values(), WeightSample.Draw(PriorityOrder.None(6), Draws, seed: 2011));

    [Fact]
    public void Scales_span_the_hull_of_the_95_per_cent_intervals()
    {
        // Printed ends. The upper end of the last criterion is left out: printed 34.0, but 31.0 + 1.96 * 1.68 = 34.3.
        (double Low, double High)[] printed = [(.98, 1.23), (1.0, 20.6), (4.4, 24.4), (8.0, 31.3), (3.4, 21.3), (11.1, double.NaN)];
        for (int criterion = 0; criterion < printed.Length; criterion++)
        {
            // 11.05 is printed as 11.1, so a little more than half of the last digit.
            double within = criterion == 0 ? 0.005 : 0.055;
            var (low, high) = Scale(criterion);
            Assert.Equal(printed[criterion].Low, low, within);
            Assert.True(double.IsNaN(printed[criterion].High) || Math.Abs(printed[criterion].High - high) < within);
        }
    }

    [Fact]
    public void Rank_acceptabilities_agree()
    {
        for (int drug = 0; drug < 4; drug++)
        {
            for (int rank = 0; rank < 4; rank++)
            {
                Assert.Equal(PrintedRanks[drug][rank], Result.RankShare(drug, rank), 0.02);
                Assert.Equal(LongRunRanks[drug][rank], Result.RankShare(drug, rank), 0.01);
            }
        }
    }

    [Fact]
    public void Central_weights_agree()
    {
        for (int drug = 0; drug < 4; drug++)
        {
            for (int criterion = 0; criterion < 6; criterion++)
            {
                Assert.Equal(PrintedCentral[drug][criterion], Result.CentralWeights[drug]!.Value[criterion], 0.02);
                Assert.Equal(LongRunCentral[drug][criterion], Result.CentralWeights[drug]!.Value[criterion], 0.01);
            }
        }
    }

    [Fact]
    public void Confidence_factors_agree()
    {
        for (int drug = 0; drug < 4; drug++)
        {
            Assert.Equal(PrintedConfidence[drug], Result.ConfidenceFactors[drug]!.Value, 0.03);
            Assert.Equal(LongRunConfidence[drug], Result.ConfidenceFactors[drug]!.Value, 0.01);
        }
    }

    private static CriterionValues Values()
    {
        CriterionValues values = new(4, 6, Draws);
        for (int drug = 0; drug < 4; drug++)
        {
            for (int criterion = 0; criterion < 6; criterion++)
            {
                RandomDraws random = new(seed: 30, stream: (ulong)((drug * 6) + criterion));
                var (mean, deviation) = Measured[drug][criterion];
                var (low, high) = Scale(criterion);
                for (int draw = 0; draw < Draws; draw++)
                {
                    double measured = mean + (deviation * random.NextNormal());
                    values[draw, drug, criterion] = criterion == 0
                        ? (Math.Exp(measured) - low) / (high - low)
                        : (high - measured) / (high - low);
                }
            }
        }

        return values;
    }

    private static (double Low, double High) Scale(int criterion)
    {
        double low = Measured.Min(drug => drug[criterion].Mean - (1.96 * drug[criterion].Deviation));
        double high = Measured.Max(drug => drug[criterion].Mean + (1.96 * drug[criterion].Deviation));
        return criterion == 0 ? (Math.Exp(low), Math.Exp(high)) : (low, high);
    }
}
