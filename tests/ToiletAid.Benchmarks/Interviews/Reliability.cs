using System.Globalization;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>Shares that were said against how often they came true, in tenths.</summary>
internal sealed class Reliability
{
    private readonly List<(double Said, bool Came)> _all = [];

    internal void Add(double said, bool came) => _all.Add((said, came));

    internal void Print()
    {
        double largest = 0;
        foreach (var tenth in _all.GroupBy(a => Math.Min(9, (int)(a.Said * 10))).OrderBy(g => g.Key))
        {
            double said = tenth.Average(a => a.Said), came = tenth.Average(a => a.Came ? 1.0 : 0);
            largest = Math.Max(largest, Math.Abs(said - came));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {tenth.Key * 10,3} to {(tenth.Key + 1) * 10,3}: {tenth.Count(),5} people, said {100 * said:F1}, came true {100 * came:F1}"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    largest gap {100 * largest:F1} of 100; mean said {100 * _all.Average(a => a.Said):F1}, mean came true {100 * _all.Average(a => a.Came ? 1.0 : 0):F1}"));
    }

    /// <summary>Rising line through the shares that came true (pool adjacent violators, Barlow and others 1972, from memory), as points for the data.</summary>
    internal string Rising()
    {
        const int Least = 20;
        var blocks = new List<(double Said, double Came, int Count)>();
        foreach (var chunk in _all.OrderBy(a => a.Said).Chunk(Math.Max(Least, _all.Count / 12)))
        {
            blocks.Add((chunk.Average(a => a.Said), chunk.Average(a => a.Came ? 1.0 : 0), chunk.Length));
            while (blocks.Count > 1 && blocks[^2].Came >= blocks[^1].Came)
            {
                var (a, b) = (blocks[^2], blocks[^1]);
                int count = a.Count + b.Count;
                blocks.RemoveRange(blocks.Count - 2, 2);
                blocks.Add((((a.Said * a.Count) + (b.Said * b.Count)) / count, ((a.Came * a.Count) + (b.Came * b.Count)) / count, count));
            }
        }

        return string.Join("; ", blocks.Select(b => string.Create(CultureInfo.InvariantCulture, $"{b.Said:F3} {b.Came:F3} ({b.Count})")));
    }
}
