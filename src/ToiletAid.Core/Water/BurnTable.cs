using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Water;

/// <summary>Time to a burn by temperature.</summary>
/// <remarks>Between rows the logarithm of the time runs straight: the rate of injury grows by a constant factor a degree (Moritz and Henriques
/// 1947, from memory). Beyond the rows only a bound is given.</remarks>
public sealed class BurnTable
{
    private readonly ImmutableArray<BurnRow> _rows;

    /// <summary>Makes a table.</summary>
    /// <param name="rows">Rows, rising in temperature and falling in time; at least two.</param>
    /// <param name="basis">What kind of knowledge it is.</param>
    /// <param name="source">Citation.</param>
    /// <exception cref="ArgumentException">Rows are not in order, too few, or a time is not above 0.</exception>
    public BurnTable(ImmutableArray<BurnRow> rows, Basis basis, string source)
    {
        bool ordered = rows.Length > 1 && rows[^1].Seconds > 0;
        for (int i = 1; ordered && i < rows.Length; i++)
        {
            ordered = rows[i].Celsius > rows[i - 1].Celsius && rows[i].Seconds < rows[i - 1].Seconds;
        }

        _rows = ordered ? rows : throw new ArgumentException("temperatures must rise and times must fall", nameof(rows));
        Basis = basis;
        Source = source;
    }

    /// <summary>What kind of knowledge it is.</summary>
    public Basis Basis { get; }

    /// <summary>Citation.</summary>
    public string Source { get; }

    /// <summary>How long water of a temperature takes to burn.</summary>
    /// <param name="celsius">Temperature, °C; any number.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="celsius"/> is not a number.</exception>
    public BurnTime At(double celsius)
    {
        if (double.IsNaN(celsius))
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "not a number");
        }

        if (celsius < _rows[0].Celsius)
        {
            return new(BurnBound.MoreThan, _rows[0].Seconds);
        }

        if (celsius > _rows[^1].Celsius)
        {
            return new(BurnBound.LessThan, _rows[^1].Seconds);
        }

        int i = 1;
        while (celsius > _rows[i].Celsius)
        {
            i++;
        }

        var (from, to) = (_rows[i - 1], _rows[i]);
        double share = (celsius - from.Celsius) / (to.Celsius - from.Celsius);
        return new(BurnBound.About, from.Seconds * Math.Pow(to.Seconds / from.Seconds, share));
    }
}
