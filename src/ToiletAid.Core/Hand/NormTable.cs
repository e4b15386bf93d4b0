using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Hand;

/// <summary>Norms of one measure by age and sex, from one publication.</summary>
/// <remarks>Each band's values hold at the middle of the band and run straight to the next band's middle; a band without an end has
/// its middle half the previous band's width above its start. Outside the first and the last middle the end value holds. Where the sex
/// is unstated, the spread of a band is that of a group of half women and half men (all decisions).</remarks>
public sealed class NormTable
{
    private static readonly double[] PercentilesOfMeans = [0.05, 0.25, 0.5, 0.75, 0.95];

    private readonly double[] _z;
    private readonly ImmutableArray<NormRow> _female;
    private readonly ImmutableArray<NormRow> _male;
    private readonly Lazy<ImmutableArray<NormRow>> _both;

    /// <summary>Makes a table.</summary>
    /// <param name="percentiles">Shares of people below each value, rising, above 0 and below 1; at least two.</param>
    /// <param name="rows">Rows of both sexes, each sex in rising order of age without overlap, both with the same bands.</param>
    /// <param name="basis">What kind of knowledge it is.</param>
    /// <param name="source">Citation.</param>
    /// <exception cref="ArgumentException">Percentiles, ages or values are not in order, or a sex is missing.</exception>
    public NormTable(ReadOnlySpan<double> percentiles, IEnumerable<NormRow> rows, Basis basis, string source)
    {
        if (percentiles.Length < 2)
        {
            throw new ArgumentException("two or more percentiles are needed", nameof(percentiles));
        }

        _z = new double[percentiles.Length];
        for (int i = 0; i < percentiles.Length; i++)
        {
            bool isShare = percentiles[i] > 0 && percentiles[i] < 1;
            _z[i] = isShare ? StandardNormal.Quantile(percentiles[i]) : throw new ArgumentException("percentiles lie between 0 and 1", nameof(percentiles));
        }

        var all = rows.ToArray();
        _female = Side(all, Sex.Female, percentiles.Length);
        _male = Side(all, Sex.Male, percentiles.Length);
        Rising(_z, nameof(percentiles));
        bool sameBands = _female.Select(r => (r.From, r.To)).SequenceEqual(_male.Select(r => (r.From, r.To)));
        if (!sameBands)
        {
            throw new ArgumentException("both sexes need the same age bands", nameof(rows));
        }

        _both = new(() => [.. _female.Zip(_male, Mixture)]);
        Basis = basis;
        Source = source;
    }

    /// <summary>Makes a table from means and standard deviations, taken as normally spread within a band.</summary>
    /// <param name="rows">Rows of both sexes, each sex in rising order of age without overlap, both with the same bands.</param>
    /// <param name="basis">What kind of knowledge it is.</param>
    /// <param name="source">Citation.</param>
    /// <exception cref="ArgumentException">Ages are not in order, a sex is missing, or a spread is too wide for its mean.</exception>
    public static NormTable OfMeans(IEnumerable<MeanRow> rows, Basis basis, string source) => new(
        PercentilesOfMeans,
        rows.Select(r => new NormRow(
            r.Sex, r.From, r.To, [.. PercentilesOfMeans.Select(p => r.Mean + (StandardNormal.Quantile(p) * r.Sd))])),
        basis,
        source);

    /// <summary>What kind of knowledge it is.</summary>
    public Basis Basis { get; }

    /// <summary>Citation.</summary>
    public string Source { get; }

    /// <summary>Middle of the oldest band, years, beyond which its values hold on; see the remarks at the type.</summary>
    public double OldestMiddle => Middle(_female, _female.Length - 1);

    /// <summary>The norm for an age and sex.</summary>
    /// <param name="ageYears">Age, years; any number, and a flag tells when the table does not have it.</param>
    /// <param name="sex">Sex; unstated gives the mixture of both.</param>
    public NormLookup For(double ageYears, Sex sex) => sex switch
    {
        Sex.Female => Of(_female, ageYears),
        Sex.Male => Of(_male, ageYears),
        _ => Of(_both.Value, ageYears),
    };

    /// <summary>Middle of a band, years. A band to 24 ends on the 25th birthday.</summary>
    private static double Middle(ImmutableArray<NormRow> rows, int i) => rows[i].To is { } to
        ? (rows[i].From + to + 1) / 2.0
        : rows[i].From + ((rows[i].From - rows[i - 1].From) / 2.0);

    private static ImmutableArray<NormRow> Side(NormRow[] rows, Sex sex, int columns)
    {
        ImmutableArray<NormRow> side = [.. rows.Where(r => r.Sex == sex)];
        if (side.Length < 2)
        {
            throw new ArgumentException($"two or more rows for {sex} are needed", nameof(rows));
        }

        for (int i = 0; i < side.Length; i++)
        {
            bool ordered = i == 0 || side[i - 1].To is { } before && before < side[i].From;
            bool endless = side[i].To is null && i < side.Length - 1;
            if (!ordered || endless || side[i].To < side[i].From || side[i].Values.Length != columns || side[i].Values[0] <= 0)
            {
                throw new ArgumentException($"row from {side[i].From} years, {sex}: ages overlap, or values are missing or not above zero", nameof(rows));
            }

            Rising(side[i].Values.AsSpan(), nameof(rows));
        }

        return side;
    }

    private static void Rising(ReadOnlySpan<double> numbers, string name)
    {
        for (int i = 1; i < numbers.Length; i++)
        {
            if (!(numbers[i] > numbers[i - 1]))
            {
                throw new ArgumentException($"{numbers[i]} after {numbers[i - 1]}: numbers must rise", name);
            }
        }
    }

    private NormRow Mixture(NormRow female, NormRow male)
    {
        var mixture = NormCurve.Mixture(new(_z, [.. female.Values]), new(_z, [.. male.Values]));
        return female with { Sex = Sex.Unstated, Values = [.. _z.Select(mixture.AtZ)] };
    }

    private NormLookup Of(ImmutableArray<NormRow> rows, double ageYears)
    {
        int last = rows.Length - 1;
        int right = 0;
        while (right < last && Middle(rows, right) < ageYears)
        {
            right++;
        }

        int left = Math.Max(right - 1, 0);
        double start = Middle(rows, left), end = Middle(rows, right);
        double share = end > start ? Math.Clamp((ageYears - start) / (end - start), 0, 1) : 0;
        double[] values = new double[_z.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = rows[left].Values[i] + (share * (rows[right].Values[i] - rows[left].Values[i]));
        }

        // A whole year of age lasts until the next birthday: 24.9 years are still in the band to 24.
        bool outside = ageYears < rows[0].From || (rows[last].To is { } to && ageYears >= to + 1);
        return new(new NormCurve(_z, values), outside);
    }
}
