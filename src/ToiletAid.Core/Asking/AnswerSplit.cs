using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Asking;

/// <summary>How much an answer is worth: people are put into parts by their answer, and the best choice within the parts is compared with the best before.</summary>
/// <remarks>Nobody helps to choose for themselves: for each person the choice is made from the others of the part, so that small parts do not
/// look better than they are. A few people's worth of the whole is mixed into each part for the same reason.</remarks>
internal sealed class AnswerSplit
{
    /// <summary>People of the whole that are mixed into each part (decision).</summary>
    private const double Mixed = 2;

    private readonly LikelyPerson[] _people;
    private readonly double[] _worth;
    private readonly int[] _best;
    private readonly int _choices;
    private readonly double[] _whole;
    private readonly double _now;
    private readonly double _apart;
    private readonly int[] _part;
    private readonly Dictionary<int, int> _parts = [];

    /// <summary>Makes ready.</summary>
    /// <param name="people">The people; their weights add up to 1.</param>
    /// <param name="rows">What each alternative is worth to each person.</param>
    /// <param name="choices">The alternatives that are looked at.</param>
    internal AnswerSplit(LikelyPerson[] people, double[][] rows, int[] choices)
    {
        _people = people;
        _choices = choices.Length;
        _worth = new double[people.Length * _choices];
        _best = new int[people.Length];
        _whole = new double[_choices];
        _part = new int[people.Length];
        for (int i = 0; i < people.Length; i++)
        {
            for (int k = 0; k < _choices; k++)
            {
                double worth = people[i].Weight * rows[i][choices[k]];
                _worth[(i * _choices) + k] = worth;
                _whole[k] += worth;
                _best[i] = worth > _worth[(i * _choices) + _best[i]] ? k : _best[i];
            }
        }

        First = Largest(_whole);
        (_now, _apart, _) = Split(1, 0);
    }

    /// <summary>The choice that is best on the whole, by its place among those looked at.</summary>
    internal int First { get; }

    /// <summary>What the answer to a question, by its number, adds.</summary>
    internal (double Gain, double Decides, double ChangeShare) Of(int question)
    {
        _parts.Clear();
        for (int i = 0; i < _people.Length; i++)
        {
            int code = _people[i].Codes[question];
            if (!_parts.TryGetValue(code, out int part))
            {
                _parts[code] = part = _parts.Count;
            }

            _part[i] = part;
        }

        if (_parts.Count < 2)
        {
            return default;
        }

        var (then, apart, changed) = Split(_parts.Count, Mixed / _people.Length);
        return (then - _now, apart - _apart, changed);
    }

    private (double Then, double Apart, double Changed) Split(int parts, double mixed)
    {
        double[] sums = new double[parts * _choices], bests = new double[parts * _choices], weights = new double[parts], squares = new double[parts], own = new double[parts];
        for (int i = 0; i < _people.Length; i++)
        {
            int part = _part[i];
            double weight = _people[i].Weight;
            var worth = _worth.AsSpan(i * _choices, _choices);
            var sum = sums.AsSpan(part * _choices, _choices);
            for (int k = 0; k < worth.Length; k++)
            {
                sum[k] += worth[k];
            }

            bests[(part * _choices) + _best[i]] += weight;
            weights[part] += weight;
            squares[part] += weight * weight;
            own[part] += weight * worth[_best[i]];
        }

        double apart = 0, changed = 0;
        for (int part = 0; part < parts; part++)
        {
            double matched = 0;
            for (int k = 0; k < _choices; k++)
            {
                matched += sums[(part * _choices) + k] * bests[(part * _choices) + k];
            }

            // Pairs of different people only: choosing for one what is best for another.
            double pairs = (weights[part] * weights[part]) - squares[part];
            apart += pairs > 1e-12 ? weights[part] * (matched - own[part]) / pairs : sums[(part * _choices) + First];
            for (int k = 0; k < _choices; k++)
            {
                sums[(part * _choices) + k] += mixed * _whole[k];
            }

            changed += Largest(sums.AsSpan(part * _choices, _choices)) != First ? weights[part] : 0;
        }

        double then = 0;
        for (int i = 0; i < _people.Length; i++)
        {
            var sum = sums.AsSpan(_part[i] * _choices, _choices);
            var worth = _worth.AsSpan(i * _choices, _choices);
            double most = double.NegativeInfinity;
            int choice = 0;
            for (int k = 0; k < worth.Length; k++)
            {
                double others = sum[k] - ((1 + mixed) * worth[k]);
                (most, choice) = others > most ? (others, k) : (most, choice);
            }

            then += worth[choice];
        }

        return (then, apart, changed);
    }

    private static int Largest(ReadOnlySpan<double> values)
    {
        int best = 0;
        for (int k = 1; k < values.Length; k++)
        {
            best = values[k] > values[best] ? k : best;
        }

        return best;
    }
}
