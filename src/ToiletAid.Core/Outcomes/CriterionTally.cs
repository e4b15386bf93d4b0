namespace ToiletAid.Core.Outcomes;

/// <summary>What was seen of one criterion against what was predicted, in tries that did not fail.</summary>
public sealed class CriterionTally
{
    private double _predicted;
    private double _seen;
    private double _squares;
    private double _weighted;

    /// <summary>Tries in which something was seen of it.</summary>
    public long Count { get; private set; }

    /// <summary>Mean of what was predicted; 0 where nothing was seen.</summary>
    public double Predicted => Count == 0 ? 0 : _predicted / Count;

    /// <summary>Mean of what was seen; 0 where nothing was.</summary>
    public double Seen => Count == 0 ? 0 : _seen / Count;

    /// <summary>Standard deviation of the differences; 0 for fewer than two.</summary>
    public double Spread
    {
        get
        {
            double mean = Seen - Predicted;
            return Count < 2 ? 0 : Math.Sqrt(Math.Max(0, (_squares - (Count * mean * mean)) / (Count - 1)));
        }
    }

    /// <summary>Sum of the precisions of the differences.</summary>
    internal double Precision { get; private set; }

    /// <summary>Mean difference, each by its precision.</summary>
    internal double Shift => _weighted / Precision;

    internal void Add(double predicted, double seen, double precision)
    {
        Count++;
        _predicted += predicted;
        _seen += seen;
        _squares += (seen - predicted) * (seen - predicted);
        _weighted += (seen - predicted) * precision;
        Precision += precision;
    }

    internal void Add(CriterionTally other)
    {
        Count += other.Count;
        _predicted += other._predicted;
        _seen += other._seen;
        _squares += other._squares;
        _weighted += other._weighted;
        Precision += other.Precision;
    }
}
