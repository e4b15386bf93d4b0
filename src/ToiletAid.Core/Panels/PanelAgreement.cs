using System.Collections.Immutable;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Panels;

/// <summary>How far raters agree with each other and with the tool on a set of cases.</summary>
/// <remarks>Kappa compares grades: first, second, third, a later place, does not suit; with squared weights. For several raters it is the mean over all pairs
/// (Light 1971, from memory). Concordance compares whole orders in each case, with what does not suit last, and is the mean over the cases.</remarks>
public sealed class PanelAgreement
{
    /// <summary>Grades: three places, a later one, does not suit.</summary>
    private const int Grades = 5;

    private const int LaterPlace = 4;
    private const double Confidence = 0.95;
    private const int Draws = 2000;

    private readonly ImmutableArray<ImmutableArray<int?>> _tool;
    private readonly ImmutableArray<Rater> _raters;
    private readonly ulong _seed;
    private readonly int[] _all;

    /// <summary>Makes ready.</summary>
    /// <param name="tool">For each case the place that the tool gives each kind.</param>
    /// <param name="raters">The raters, one or more.</param>
    /// <param name="seed">Seed of the intervals.</param>
    public PanelAgreement(ImmutableArray<ImmutableArray<int?>> tool, ImmutableArray<Rater> raters, ulong seed)
    {
        (_tool, _raters, _seed) = (tool, raters, seed);
        _all = [.. Enumerable.Range(0, tool.Length)];
    }

    /// <summary>Mean weighted kappa of all pairs of raters.</summary>
    public Estimate KappaAmong() => With(cases => Mean(Pairs().Select(p => Kappa(p.One.Places, p.Other.Places, cases))));

    /// <summary>Mean weighted kappa of the tool with each rater.</summary>
    public Estimate KappaWithTool() => With(cases => Mean(_raters.Select(r => Kappa(_tool, r.Places, cases))));

    /// <summary>Weighted kappa of the tool with one rater.</summary>
    /// <param name="rater">The rater.</param>
    public Estimate KappaWithTool(Rater rater)
    {
        ArgumentNullException.ThrowIfNull(rater);
        return With(cases => Kappa(_tool, rater.Places, cases));
    }

    /// <summary>Mean concordance of the raters.</summary>
    public Estimate ConcordanceAmong() => With(cases => Mean(cases.Select(ConcordanceOf)));

    /// <summary>Mean concordance of the tool with the mean order of the raters.</summary>
    public Estimate ConcordanceWithTool() => With(cases => Mean(cases.Select(c => Agreement.Concordance([Order(_tool[c]), MeanRanks(c)]))));

    /// <summary>Concordance of the raters in one case.</summary>
    /// <param name="number">Number of the case, from 0.</param>
    public double? ConcordanceOf(int number) => Agreement.Concordance([.. _raters.Select(r => Order(r.Places[number]))]);

    /// <summary>Share of raters and cases in which the tool's first is the rater's first too.</summary>
    /// <returns>How many of how many; a rater to whom nothing suits counts as none.</returns>
    public (int Same, int All) FirstsShared() =>
        (_raters.Sum(r => _all.Count(c => Enumerable.Range(0, _tool[c].Length).Any(k => _tool[c][k] == 1 && r.Places[c][k] == 1))), _raters.Length * _tool.Length);

    /// <summary>Mean distance between the grades of the tool and those of the raters in a case.</summary>
    /// <param name="number">Number of the case, from 0.</param>
    public double Distance(int number) => _raters.Average(r => r.Places[number].Zip(_tool[number], (a, b) => (double)Math.Abs(Grade(a) - Grade(b))).Average());

    /// <summary>The kind that the raters put first on average.</summary>
    /// <param name="number">Number of the case, from 0.</param>
    /// <returns>Its place among the kinds; where several share it, the one that the tool ranks best.</returns>
    public int PanelFirst(int number)
    {
        double[] ranks = MeanRanks(number), tool = Order(_tool[number]);
        return Enumerable.Range(0, ranks.Length).OrderBy(k => ranks[k]).ThenBy(k => tool[k]).First();
    }

    private Estimate With(Func<int[], double?> figure) => new(figure(_all), Resampling.Percentiles(_all.Length, figure, Confidence, Draws, _seed));

    private static double? Kappa(ImmutableArray<ImmutableArray<int?>> one, ImmutableArray<ImmutableArray<int?>> other, int[] cases)
    {
        double[,] counts = new double[Grades, Grades];
        foreach (int number in cases)
        {
            for (int kind = 0; kind < one[number].Length; kind++)
            {
                counts[Grade(one[number][kind]), Grade(other[number][kind])]++;
            }
        }

        return Agreement.WeightedKappa(counts, Agreement.Squared);
    }

    private double[] MeanRanks(int number)
    {
        double[][] ranks = [.. _raters.Select(r => Agreement.Ranks(Order(r.Places[number])))];
        return [.. Enumerable.Range(0, _tool[number].Length).Select(k => ranks.Average(r => r[k]))];
    }

    private IEnumerable<(Rater One, Rater Other)> Pairs() =>
        from one in Enumerable.Range(0, _raters.Length)
        from other in Enumerable.Range(one + 1, _raters.Length - one - 1)
        select (_raters[one], _raters[other]);

    private static double[] Order(ImmutableArray<int?> places) => [.. places.Select(p => p ?? (double)int.MaxValue)];

    private static int Grade(int? place) => place is { } p ? Math.Min(p, LaterPlace) - 1 : Grades - 1;

    private static double? Mean(IEnumerable<double?> values)
    {
        double[] known = [.. values.OfType<double>()];
        return known.Length == 0 ? null : known.Average();
    }
}
