using BenchmarkDotNet.Attributes;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Benchmarks;

/// <summary>Ranking of 13 alternatives on 8 criteria with 128 draws of the values: what the tool does after each answer.</summary>
public class RankingBenchmarks
{
    private const int Alternatives = 13, Criteria = 8, ValueDraws = 128;

    private readonly double[] _flat = new double[Alternatives * Criteria * ValueDraws];
    private readonly PriorityOrder _order = PriorityOrder.Of(Criteria, [[2], [0, 5], [7]]);
    private WeightSample _weights = WeightSample.Draw(PriorityOrder.None(Criteria), 1, 1);
    private CriterionValues _values = new(Alternatives, Criteria);

    /// <summary>Weight draws: 9,604 keeps shares within 0.01, 1,024 is for inner loops.</summary>
    [Params(1_024, 9_604)]
    public int Draws { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        RandomDraws draws = new(seed: 1, stream: 1);
        for (int i = 0; i < _flat.Length; i++)
        {
            _flat[i] = draws.NextUniform();
        }

        _values = CriterionValues.Of(Alternatives, Criteria, ValueDraws, _flat);
        _weights = WeightSample.Draw(_order, Draws, seed: 1);
    }

    [Benchmark]
    public WeightSample DrawWeights() => WeightSample.Draw(_order, Draws, seed: 1);

    [Benchmark]
    public CriterionValues TakeValues() => CriterionValues.Of(Alternatives, Criteria, ValueDraws, _flat);

    [Benchmark]
    public AcceptabilityResult FullRanking() => Acceptability.Of(_values, _weights);

    [Benchmark]
    public double[] FirstRankSharesOnly() => FirstRank.Shares(_values, _weights);

    [Benchmark]
    public double[] ExpectedValuesOnly() => ExpectedValues.Of(_values, _weights.Set);
}
