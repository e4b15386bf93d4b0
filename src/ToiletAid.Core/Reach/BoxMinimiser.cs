using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>Least value of a reach objective over a box of joint ranges: projected quasi-Newton steps (BFGS) from a start.</summary>
/// <remarks>Method of Bertsekas 1982 (projected Newton) with the BFGS update; from memory. Deterministic; no heap.</remarks>
internal static class BoxMinimiser
{
    private const int N = JointVector.Count;
    private const double Nudge = 1e-7;
    private const double LargestStep = 0.5;

    /// <summary>Goes down from <paramref name="q"/>, which is replaced by the best point found.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="q">Start, inside the box; end on return.</param>
    /// <param name="rounds">Largest number of steps.</param>
    /// <param name="tolerance">Stops when two steps together gain less than this, m.</param>
    /// <returns>The value there, m.</returns>
    public static double Descend(in ReachObjective objective, in JointBox box, ref JointVector q, int rounds, double tolerance)
    {
        Square inverse = default;
        inverse.Reset(0.3);
        double value = objective.At(in q);
        JointVector slope = Slope(in objective, in box, in q, value);
        int weak = 0;
        for (int round = 0; round < rounds && weak < 2; round++)
        {
            JointVector direction = Direction(in inverse, in box, in q, in slope, out bool downhill);
            if (!downhill)
            {
                inverse.Reset(0.3);
                direction = Direction(in inverse, in box, in q, in slope, out downhill);
                if (!downhill)
                {
                    break;
                }
            }

            double better = Search(in objective, in box, in q, value, in slope, in direction, out JointVector next);
            if (!(better < value))
            {
                if (inverse.IsFresh)
                {
                    break;
                }

                inverse.Reset(0.05);
                weak++;
                continue;
            }

            JointVector nextSlope = Slope(in objective, in box, in next, better);
            inverse.Update(in q, in next, in slope, in nextSlope);
            weak = value - better < tolerance ? weak + 1 : 0;
            q = next;
            slope = nextSlope;
            value = better;
        }

        return value;
    }

    /// <summary>Slope at a point by small differences, stepping to the inside of the box.</summary>
    public static JointVector Slope(in ReachObjective objective, in JointBox box, in JointVector q, double value)
    {
        JointVector slope = default;
        JointVector moved = q;
        for (int i = 0; i < N; i++)
        {
            double step = q[i] + Nudge > box.High[i] ? -Nudge : Nudge;
            moved[i] = q[i] + step;
            slope[i] = (objective.At(in moved) - value) / step;
            moved[i] = q[i];
        }

        return slope;
    }

    private static JointVector Direction(in Square inverse, in JointBox box, in JointVector q, in JointVector slope, out bool downhill)
    {
        JointVector direction = default;
        double descent = 0, largest = 0;
        for (int i = 0; i < N; i++)
        {
            if (IsHeld(in box, in q, in slope, i))
            {
                continue;
            }

            double sum = 0;
            for (int j = 0; j < N; j++)
            {
                sum -= IsHeld(in box, in q, in slope, j) ? 0 : inverse[i, j] * slope[j];
            }

            direction[i] = sum;
            descent += sum * slope[i];
            largest = Math.Max(largest, Math.Abs(sum));
        }

        if (largest > LargestStep)
        {
            for (int i = 0; i < N; i++)
            {
                direction[i] *= LargestStep / largest;
            }
        }

        downhill = descent < -1e-12;
        return direction;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool IsHeld(in JointBox box, in JointVector q, in JointVector slope, int i) =>
        (q[i] <= box.Low[i] && slope[i] > 0) || (q[i] >= box.High[i] && slope[i] < 0);

    private static double Search(
        in ReachObjective objective,
        in JointBox box,
        in JointVector q,
        double value,
        in JointVector slope,
        in JointVector direction,
        out JointVector next)
    {
        double share = 1;
        next = q;
        for (int halving = 0; halving < 14; halving++)
        {
            double expected = 0;
            for (int i = 0; i < N; i++)
            {
                next[i] = Math.Min(Math.Max(q[i] + (share * direction[i]), box.Low[i]), box.High[i]);
                expected += slope[i] * (next[i] - q[i]);
            }

            double there = objective.At(in next);
            if (there <= value + (1e-4 * expected) && there < value)
            {
                return there;
            }

            share *= halving < 2 ? 0.4 : 0.25;
        }

        next = q;
        return value;
    }

    /// <summary>A symmetric 7 by 7 matrix without a heap object.</summary>
    [InlineArray(N * N)]
    private struct Cells
    {
        private double _first;
    }

    private struct Square
    {
        private Cells _cells;

        public bool IsFresh { get; private set; }

        public readonly double this[int i, int j] => _cells[(i * N) + j];

        public void Reset(double size)
        {
            _cells = default;
            for (int i = 0; i < N; i++)
            {
                _cells[(i * N) + i] = size;
            }

            IsFresh = true;
        }

        /// <summary>BFGS update of the inverse from a step and the change of slope.</summary>
        public void Update(in JointVector from, in JointVector to, in JointVector slopeFrom, in JointVector slopeTo)
        {
            JointVector s = default, y = default;
            double sy = 0, yy = 0;
            for (int i = 0; i < N; i++)
            {
                s[i] = to[i] - from[i];
                y[i] = slopeTo[i] - slopeFrom[i];
                sy += s[i] * y[i];
                yy += y[i] * y[i];
            }

            if (!(sy > 1e-12))
            {
                return;
            }

            if (IsFresh)
            {
                Reset(sy / yy);
                IsFresh = false;
            }

            JointVector hy = default;
            double yhy = 0;
            for (int i = 0; i < N; i++)
            {
                double sum = 0;
                for (int j = 0; j < N; j++)
                {
                    sum += _cells[(i * N) + j] * y[j];
                }

                hy[i] = sum;
                yhy += sum * y[i];
            }

            double scale = (1 + (yhy / sy)) / sy;
            for (int i = 0; i < N; i++)
            {
                for (int j = 0; j < N; j++)
                {
                    _cells[(i * N) + j] += (scale * s[i] * s[j]) - (((hy[i] * s[j]) + (s[i] * hy[j])) / sy);
                }
            }
        }
    }
}
