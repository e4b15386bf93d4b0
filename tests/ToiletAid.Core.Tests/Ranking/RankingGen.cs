using CsCheck;
using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

/// <summary>Generated orders and values.</summary>
internal static class RankingGen
{
    /// <summary>Values in hundredths; or, so that ties are common, one of three; or so close to each other that singles are equal.</summary>
    public static Gen<double[]> Values(int count) => Gen.OneOf(
        Gen.Int[0, 100].Select(i => i / 100.0).Array[count],
        Gen.Int[0, 2].Select(i => i / 10.0).Array[count],
        Gen.Int[0, 9].Select(i => 0.5 + (i * 1e-12)).Array[count]);

    /// <summary>Any order of some of the criteria, ties of both meanings included.</summary>
    public static Gen<PriorityOrder> Order(int criteria) =>
        Gen.Select(
            Gen.Shuffle(Enumerable.Range(0, criteria).ToArray()),
            Gen.Int[0, criteria],
            Gen.Bool.Array[criteria],
            Gen.Bool.Select(equal => equal ? TieMeaning.EqualWeights : TieMeaning.EitherFirst),
            (shuffled, mentioned, joins, ties) =>
            {
                List<List<int>> places = [];
                for (int i = 0; i < mentioned; i++)
                {
                    if (places.Count == 0 || !joins[i])
                    {
                        places.Add([]);
                    }

                    places[^1].Add(shuffled[i]);
                }

                return PriorityOrder.Of(criteria, places, ties);
            });

    /// <summary>The same for some number of criteria.</summary>
    public static Gen<PriorityOrder> Order(int fewest, int most) => Gen.Int[fewest, most].SelectMany(Order);

    /// <summary>An order with values of some alternatives, given in one draw.</summary>
    public static Gen<(PriorityOrder Order, CriterionValues Values)> Case(int mostAlternatives, int mostCriteria) =>
        Gen.Select(Gen.Int[1, mostAlternatives], Order(1, mostCriteria)).SelectMany(
            (alternatives, order) => Values(alternatives * order.Criteria).Select(
                flat => (order, CriterionValues.Of(alternatives, order.Criteria, 1, flat))));

    /// <summary>Evenly spread values of several draws.</summary>
    public static CriterionValues Random(int alternatives, int criteria, int draws, ulong seed)
    {
        Core.Randomness.RandomDraws random = new(seed, 99);
        double[] flat = new double[alternatives * criteria * draws];
        for (int i = 0; i < flat.Length; i++)
        {
            flat[i] = random.NextUniform();
        }

        return CriterionValues.Of(alternatives, criteria, draws, flat);
    }
}
