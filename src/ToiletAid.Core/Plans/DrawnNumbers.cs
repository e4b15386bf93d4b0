using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Plans;

/// <summary>The numbers of evidence, hand and aids as they may be: sets of them, each number drawn from its range, and the same for all plans that a set values.</summary>
/// <remarks>A range is taken as a triangle from its low end over the most plausible value to its high end. The sets hold one draw from each of as many equal
/// parts of it, in an order of its own (Latin hypercube: McKay, Beckman and Conover 1979, Technometrics 21:239, from memory). What has no range stays as it is, and so does what was decided: that is a definition, and nothing is unknown of it.</remarks>
internal sealed class DrawnNumbers
{
    /// <summary>Sets of numbers (decision, for speed: four persons who are drawn share one).</summary>
    internal const int Sets = 16;

    private const ulong Offset = 14695981039346656037;
    private const ulong Prime = 1099511628211;

    private readonly ulong _seed;
    private readonly Dictionary<string, int[]> _parts;
    private readonly DrawnNumberSet[] _sets;

    /// <summary>Draws.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="seed">Seed of the draws.</param>
    internal DrawnNumbers(KnowledgeBase knowledge, ulong seed)
    {
        (_seed, _parts) = (seed, new(StringComparer.Ordinal));
        _sets = [.. Enumerable.Range(0, Sets).Select(set => DrawnNumberSet.Of(this, set, knowledge))];
    }

    private DrawnNumbers(DrawnNumbers of, KnowledgeBase knowledge)
    {
        (_seed, _parts) = (of._seed, of._parts);
        _sets = [.. of._sets.Select(s => s.Under(knowledge))];
    }

    /// <summary>The same draws where aids or prices are others.</summary>
    /// <param name="knowledge">What is known beforehand, with the same evidence and the same hands.</param>
    internal DrawnNumbers Under(KnowledgeBase knowledge) => new(this, knowledge);

    /// <summary>The numbers that go with a drawn person.</summary>
    /// <param name="draw">Number of the person, 0 or more.</param>
    internal NumberSet Of(int draw) => _sets[draw % Sets];

    /// <summary>A number as it is in a set.</summary>
    /// <param name="set">Number of the set, from 0.</param>
    /// <param name="name">What tells the number from all others.</param>
    /// <param name="number">The number.</param>
    internal Sourced Drawn(int set, string name, Sourced number)
    {
        double width = number.High - number.Low;
        if (!(width > 0) || number.Basis == Basis.Decision)
        {
            return number;
        }

        double share = (Parts(name)[set] + 0.5) / Sets, mode = (number.Value - number.Low) / width;
        double at = share < mode ? Math.Sqrt(share * mode) : 1 - Math.Sqrt((1 - share) * (1 - mode));
        double value = number.Low + (at * width);
        return number with { Value = value, Low = value, High = value };
    }

    /// <summary>Which of the equal parts of its range a number is drawn from in each set.</summary>
    private int[] Parts(string name)
    {
        if (!_parts.TryGetValue(name, out int[]? parts))
        {
            ulong stream = Offset;
            foreach (char letter in name)
            {
                stream = (stream ^ letter) * Prime;
            }

            var draws = new RandomDraws(_seed, stream);
            _parts[name] = parts = new int[Sets];
            for (int i = 0; i < Sets; i++)
            {
                int j = (int)(draws.NextBits() % (ulong)(i + 1));
                parts[i] = parts[j];
                parts[j] = i;
            }
        }

        return parts;
    }
}
