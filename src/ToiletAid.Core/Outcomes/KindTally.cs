using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Outcomes;

/// <summary>First tries of one kind of aid, counted. It takes the same memory for ten people as for a million.</summary>
public sealed class KindTally
{
    /// <summary>Steps in which predicted shares are kept: fine enough that nothing is lost of what few tries can tell.</summary>
    internal const int Steps = 50;

    private readonly long[] _count = new long[Steps];
    private readonly long[] _failed = new long[Steps];
    private readonly double[] _works = new double[Steps];
    private readonly CriterionTally[] _criteria = [.. Enumerable.Range(0, Criteria.Count).Select(_ => new CriterionTally())];
    private readonly SortedDictionary<string, long> _problems = new(StringComparer.Ordinal);

    internal KindTally(string aid) => Aid = aid;

    /// <summary>Id of the kind; empty for all kinds together.</summary>
    public string Aid { get; }

    /// <summary>People with whom it was tried.</summary>
    public long People { get; private set; }

    /// <summary>With how many it failed.</summary>
    public long Failed { get; private set; }

    /// <summary>With how many it was predicted to fail.</summary>
    public double ExpectedToFail => _count.Sum() - _works.Sum();

    /// <summary>With how many it was tried dry and clothed only.</summary>
    public long DryOnly { get; private set; }

    /// <summary>What was seen of each criterion, in their order.</summary>
    public ImmutableArray<CriterionTally> ByCriterion => [.. _criteria];

    /// <summary>What went wrong in failed tries, by id of the finding, and how often.</summary>
    public IReadOnlyDictionary<string, long> Problems => _problems;

    /// <summary>Tries whose predicted share of working lies in a range.</summary>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end; only 1 itself is included.</param>
    public (long Count, long Failed, double Works) Between(double low, double high)
    {
        int from = (int)Math.Round(low * Steps), to = (int)Math.Round(high * Steps);
        return (_count[from..to].Sum(), _failed[from..to].Sum(), _works[from..to].Sum());
    }

    internal void Add(FirstTry tried, double model, double error)
    {
        int step = Math.Min(Steps - 1, (int)(tried.Works * Steps));
        _count[step]++;
        _works[step] += tried.Works;
        People++;
        DryOnly += tried.Decided == RunKind.Dry ? 1 : 0;
        if (tried.Failed)
        {
            _failed[step]++;
            Failed++;
            foreach (string finding in tried.Findings.Failures.Select(f => f.Id).Concat(tried.Problems).Distinct(StringComparer.Ordinal))
            {
                _problems[finding] = _problems.GetValueOrDefault(finding) + 1;
            }

            return;
        }

        for (int c = 0; c < Criteria.Count; c++)
        {
            if (tried.Findings.Seen[c] is { } seen)
            {
                _criteria[c].Add(tried.Predicted.Criteria[c], seen, 1 / ((model * model) + (error * error)));
            }
        }
    }

    /// <summary>Tries with the log odds with which they were predicted to fail.</summary>
    internal ImmutableArray<Tries> ToFit(double surest) => [.. Enumerable.Range(0, Steps).Where(s => _count[s] > 0).Select(s =>
    {
        double works = Math.Clamp(_works[s] / _count[s], 1 - surest, surest);
        return new Tries(Math.Log((1 - works) / works), _count[s], _failed[s]);
    })];

    /// <summary>Another tally put to this one.</summary>
    internal void Add(KindTally other)
    {
        for (int s = 0; s < Steps; s++)
        {
            _count[s] += other._count[s];
            _failed[s] += other._failed[s];
            _works[s] += other._works[s];
        }

        People += other.People;
        Failed += other.Failed;
        DryOnly += other.DryOnly;
        for (int c = 0; c < Criteria.Count; c++)
        {
            _criteria[c].Add(other._criteria[c]);
        }

        foreach (var (id, count) in other._problems)
        {
            _problems[id] = _problems.GetValueOrDefault(id) + count;
        }
    }
}
