using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Benchmarks;

/// <summary>The ranking arithmetic on prepared matrices, written down for <c>reference.py</c>, which does the same with NumPy and checks that both agree.</summary>
internal static class ReferenceComparison
{
    private const int Rankings = 60, Alternatives = 13, Criteria = 8, ValueDraws = 64, WeightDraws = 9604, Rounds = 5;

    internal static void Run(string folder)
    {
        var draws = new RandomDraws(seed: 1, stream: 1);
        double[] flat = new double[Rankings * ValueDraws * Alternatives * Criteria];
        for (int i = 0; i < flat.Length; i++)
        {
            flat[i] = draws.NextUniform();
        }

        int size = ValueDraws * Alternatives * Criteria;
        var values = Enumerable.Range(0, Rankings).Select(r => CriterionValues.Of(Alternatives, Criteria, ValueDraws, flat.AsSpan(r * size, size))).ToArray();
        var weights = WeightSample.Draw(PriorityOrder.Of(Criteria, [[2], [0, 5], [7]]), WeightDraws, seed: 1);
        var results = new AcceptabilityResult[Rankings];
        double best = double.MaxValue;
        for (int round = 0; round < Rounds; round++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int r = 0; r < Rankings; r++)
            {
                results[r] = Acceptability.Of(values[r], weights);
            }

            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds / Rankings);
        }

        Write(folder, "values", flat);
        Write(folder, "weights", [.. Enumerable.Range(0, WeightDraws).SelectMany(d => weights[d].ToArray())]);
        Write(folder, "shares", [.. results.SelectMany(r => Pairs(r.RankShare))]);
        Write(folder, "wins", [.. results.SelectMany(r => Pairs(r.PairwiseWinningShare))]);
        Write(folder, "central", [.. results.SelectMany(r => r.CentralWeights.SelectMany(c => c is { } w ? w.ToArray() : new double[Criteria]))]);
        Write(folder, "confidence", [.. results.SelectMany(r => r.ConfidenceFactors.Select(c => c ?? 0))]);
        File.WriteAllText(Path.Combine(folder, "toiletaid.txt"), best.ToString("R", CultureInfo.InvariantCulture));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"toiletaid: {best:F3} ms a ranking, best of {Rounds} rounds of {Rankings}, one core"));
    }

    private static IEnumerable<double> Pairs(Func<int, int, double> of) =>
        Enumerable.Range(0, Alternatives).SelectMany(i => Enumerable.Range(0, Alternatives).Select(j => of(i, j)));

    private static void Write(string folder, string name, double[] numbers) =>
        File.WriteAllBytes(Path.Combine(folder, name + ".bin"), MemoryMarshal.AsBytes<double>(numbers));
}
