using ToiletAid.Core.Ranking;

namespace ToiletAid.Core.Tests.Ranking;

/// <summary>First-rank shares with two and three criteria in another way than the program's: lengths of intervals and areas of clipped polygons.</summary>
internal static class Cells
{
    /// <summary>Two equal weights leave a single point.</summary>
    public static bool HasLength(PriorityOrder order) => order.Ties == TieMeaning.EitherFirst || order.Places.All(place => place.Length == 1);

    /// <summary>Each alternative is best where the first weight lies in an interval; the length, as a share of the allowed weights.</summary>
    public static double[] Lengths(PriorityOrder order, CriterionValues values)
    {
        double from = First(order) == 0 ? 0.5 : 0, to = First(order) == 1 ? 0.5 : 1;
        return Shared(values, i =>
        {
            double low = from, high = to;
            for (int k = 0; k < values.Alternatives; k++)
            {
                // The lead of i over k is a w + b.
                double b = values[0, i, 1] - values[0, k, 1], a = values[0, i, 0] - values[0, k, 0] - b;
                if (Same(values, i, k))
                {
                    continue;
                }

                low = a > 0 ? Math.Max(low, -b / a) : low;
                high = a < 0 ? Math.Min(high, -b / a) : high;
                high = a == 0 && b < 0 ? low : high;
            }

            return Math.Max(0, high - low) / (to - from);
        });
    }

    /// <summary>Each alternative is best in a polygon of the first two weights; its area, as a share of the allowed weights.</summary>
    public static double[] Areas(PriorityOrder order, CriterionValues values)
    {
        List<(double X, double Y)> allowed = [(0, 0), (1, 0), (0, 1)];
        int[][] places = [.. order.Places.Select(place => place.ToArray()), [.. order.Unmentioned]];
        for (int place = 0; place + 1 < places.Length; place++)
        {
            foreach (int greater in places[place])
            {
                foreach (int lesser in places[place + 1])
                {
                    allowed = Clip(allowed, [.. Enumerable.Range(0, 3).Select(c => c == greater ? 1.0 : c == lesser ? -1.0 : 0)]);
                }
            }
        }

        return Shared(values, i =>
        {
            var best = allowed;
            for (int k = 0; k < values.Alternatives; k++)
            {
                best = Same(values, i, k) ? best : Clip(best, [.. Enumerable.Range(0, 3).Select(c => values[0, i, c] - values[0, k, c])]);
            }

            return Area(best) / Area(allowed);
        });
    }

    /// <summary>Alternatives with the same values divide their part.</summary>
    private static double[] Shared(CriterionValues values, Func<int, double> part)
    {
        int[] all = [.. Enumerable.Range(0, values.Alternatives)];
        return [.. all.Select(i => part(i) / all.Count(k => Same(values, i, k)))];
    }

    private static int First(PriorityOrder order) =>
        order.Places.IsEmpty || order.Places[0].Length == 2 ? -1 : order.Places[0][0];

    private static bool Same(CriterionValues values, int i, int k) =>
        Enumerable.Range(0, values.Criteria).All(c => values[0, i, c] == values[0, k, c]);

    /// <summary>Keeps the part in which the weighted sum of the coefficients is not negative (Sutherland and Hodgman 1974).</summary>
    private static List<(double X, double Y)> Clip(List<(double X, double Y)> polygon, double[] coefficients)
    {
        List<(double X, double Y)> kept = [];
        double At((double X, double Y) p) =>
            (coefficients[0] * p.X) + (coefficients[1] * p.Y) + (coefficients[2] * (1 - p.X - p.Y));
        for (int i = 0; i < polygon.Count; i++)
        {
            var (here, next) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            double a = At(here), b = At(next);
            if (a >= 0)
            {
                kept.Add(here);
            }

            if ((a < 0 && b > 0) || (a > 0 && b < 0))
            {
                double part = a / (a - b);
                kept.Add((here.X + (part * (next.X - here.X)), here.Y + (part * (next.Y - here.Y))));
            }
        }

        return kept;
    }

    private static double Area(List<(double X, double Y)> polygon)
    {
        double twice = 0;
        for (int i = 0; i < polygon.Count; i++)
        {
            var (here, next) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            twice += (here.X * next.Y) - (next.X * here.Y);
        }

        return twice / 2;
    }
}
