using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>Least value of a reach objective over a box of joint ranges: projected Gauss-Newton steps with Levenberg and Marquardt's
/// damping, from a start.</summary>
/// <remarks>The stiff solids make narrow curved valleys. Their steep sides come from squares of depths, whose curvature follows from first
/// differences, so that steps along the valley can be long. Limits that the slope presses against are held (Bertsekas 1982, from
/// memory). Deterministic; no heap.</remarks>
internal static class BoxMinimiser
{
    private const int N = JointVector.Count;

    /// <summary>Goes down from <paramref name="q"/>, which is replaced by the best point found.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="q">Start, inside the box; end on return.</param>
    /// <param name="rounds">Largest number of steps.</param>
    /// <param name="tolerance">Stops when two steps in a row gain less than this share of the stature.</param>
    /// <returns>The value there, m.</returns>
    public static double Descend(in ReachObjective objective, in JointBox box, ref JointVector q, int rounds, double tolerance)
    {
        JointAngles angles = objective.Angles(in q);
        objective.Try(in angles, ReachObjective.Everything, out ReachTrial here);
        double unit = objective.Unit, damping = 0.06 * unit;
        int weak = 0;
        for (int round = 0; round < rounds && weak < 2; round++)
        {
            Matrix curvature = default;
            objective.Slopes(in angles, in here, out ReachSlopes slopes);
            AddCurvature(in objective, in here, in slopes, ref curvature);
            bool moved = false;
            for (int attempt = 0; attempt < 14 && !moved; attempt++)
            {
                JointVector next = Step(in curvature, in box, in q, in slopes.Value, damping, out double expected);
                if (expected > -1e-10 * unit)
                {
                    // Cut off at the limits, the step would not go down; a more damped one keeps closer to the slope.
                    damping *= 25;
                    continue;
                }

                JointAngles nextAngles = objective.Angles(in next);
                objective.Try(in nextAngles, ReachObjective.Everything, out ReachTrial there);
                double gain = here.Value - there.Value;
                double share = gain / -expected;
                damping *= share > 0.75 ? 0.2 : (share > 0.25 ? 1 : 5);
                if (gain > 0)
                {
                    moved = true;
                    weak = gain < tolerance * unit ? weak + 1 : 0;
                    q = next;
                    angles = nextAngles;
                    here = there;
                }
            }

            if (!moved)
            {
                break;
            }

            damping = Math.Max(damping, 1e-6 * unit);
        }

        return here.Value;
    }

    /// <summary>Slope at a point, m/rad.</summary>
    public static JointVector Slope(in ReachObjective objective, in JointVector q)
    {
        JointAngles angles = objective.Angles(in q);
        objective.Try(in angles, ReachObjective.Everything, out ReachTrial here);
        objective.Slopes(in angles, in here, out ReachSlopes slopes);
        return slopes.Value;
    }

    /// <summary>Curvature: of the distance to where the way touches (across the line, one over the distance), of the squares of the
    /// depths, and of the handle's bend.</summary>
    private static void AddCurvature(in ReachObjective objective, in ReachTrial here, in ReachSlopes slopes, ref Matrix curvature)
    {
        Space line = here.Grip - here.Touch;
        double size = Math.Max(line.Length, 0.006 * objective.Unit);
        Space n = (1 / size) * line;
        for (int i = 0; i < N; i++)
        {
            double along = Space.Dot(n, slopes.Grip[i]);
            for (int j = 0; j <= i; j++)
            {
                curvature[i, j] += (Space.Dot(slopes.Grip[i], slopes.Grip[j]) - (along * Space.Dot(n, slopes.Grip[j]))) / size;
            }
        }

        double pressure = 2 * objective.Pressure(here.Pressed);
        JointVector total = default;
        for (int k = 0; k < slopes.Count; k++)
        {
            double depth = here.Depth[slopes.Which[k]];
            curvature.Add(pressure, in slopes.Depth[k]);
            for (int i = 0; i < N; i++)
            {
                total[i] += 2 * depth * slopes.Depth[k][i];
            }
        }

        if (slopes.Count > 0)
        {
            curvature.Add(objective.PressureGrowth, in total);
        }

        if (here.Tilt > 0 || here.Turn > 0)
        {
            curvature.Add(2 * objective.BendCost, in slopes.Tilt);
            curvature.Add(2 * objective.BendCost, in slopes.Turn);
        }
    }

    /// <summary>The damped step from a point, cut off at the limits, and the change that the model expects of it.</summary>
    private static JointVector Step(
        in Matrix curvature,
        in JointBox box,
        in JointVector q,
        in JointVector slope,
        double damping,
        out double expected)
    {
        Fixed state = default;
        JointVector step = default;
        for (int i = 0; i < N; i++)
        {
            state[i] = (q[i] <= box.Low[i] && slope[i] > 0) || (q[i] >= box.High[i] && slope[i] < 0);
        }

        // Where the step would leave the box it goes to the limit, and the others are solved again around that.
        bool again = true;
        for (int pass = 0; pass < 4 && again; pass++)
        {
            again = false;
            JointVector free = Solve(in curvature, in slope, in step, in state, damping);
            for (int i = 0; i < N; i++)
            {
                if (state[i])
                {
                    continue;
                }

                double there = q[i] + free[i], inside = Math.Min(Math.Max(there, box.Low[i]), box.High[i]);
                step[i] = inside - q[i];
                if (inside != there)
                {
                    state[i] = true;
                    again = true;
                }
            }
        }

        JointVector next = default;
        expected = 0;
        for (int i = 0; i < N; i++)
        {
            next[i] = Math.Min(Math.Max(q[i] + step[i], box.Low[i]), box.High[i]);
            step[i] = next[i] - q[i];
            expected += slope[i] * step[i];
        }

        expected += 0.5 * curvature.Along(in step);
        return next;
    }

    /// <summary>The step of the free variables around the steps of the fixed ones.</summary>
    private static JointVector Solve(in Matrix curvature, in JointVector slope, in JointVector step, in Fixed state, double damping)
    {
        Matrix damped = default;
        JointVector packed = default;
        Order order = default;
        int count = 0;
        for (int i = 0; i < N; i++)
        {
            if (state[i])
            {
                continue;
            }

            order[count] = i;
            double right = -slope[i];
            for (int j = 0; j < N; j++)
            {
                right -= state[j] ? curvature[Math.Max(i, j), Math.Min(i, j)] * step[j] : 0;
            }

            packed[count] = right;
            for (int k = 0; k < count; k++)
            {
                damped[count, k] = curvature[i, order[k]];
            }

            damped[count, count] = curvature[i, i] + damping;
            count++;
        }

        damped.Solve(count, ref packed);
        JointVector free = default;
        for (int k = 0; k < count; k++)
        {
            free[order[k]] = packed[k];
        }

        return free;
    }

    [InlineArray(N)]
    private struct Order
    {
        private int _first;
    }

    [InlineArray(N)]
    private struct Fixed
    {
        private bool _first;
    }

    [InlineArray(N * N)]
    private struct Cells
    {
        private double _first;
    }

    /// <summary>A symmetric matrix of which the lower half is kept.</summary>
    private struct Matrix
    {
        private Cells _cells;

        public double this[int i, int j]
        {
            readonly get => _cells[(i * N) + j];
            set => _cells[(i * N) + j] = value;
        }

        public void Add(double size, in JointVector v)
        {
            for (int i = 0; i < N; i++)
            {
                double k = size * v[i];
                for (int j = 0; j <= i; j++)
                {
                    _cells[(i * N) + j] += k * v[j];
                }
            }
        }

        public readonly double Along(in JointVector v)
        {
            double sum = 0;
            for (int i = 0; i < N; i++)
            {
                sum += _cells[(i * N) + i] * v[i] * v[i];
                for (int j = 0; j < i; j++)
                {
                    sum += 2 * _cells[(i * N) + j] * v[i] * v[j];
                }
            }

            return sum;
        }

        /// <summary>Solves for the right-hand side in place, first rows only, by Cholesky's method; a pivot that is not above 0 is made so.</summary>
        public void Solve(int size, ref JointVector b)
        {
            for (int i = 0; i < size; i++)
            {
                for (int j = 0; j <= i; j++)
                {
                    double sum = _cells[(i * N) + j];
                    for (int k = 0; k < j; k++)
                    {
                        sum -= _cells[(i * N) + k] * _cells[(j * N) + k];
                    }

                    _cells[(i * N) + j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-9)) : sum / _cells[(j * N) + j];
                }
            }

            for (int i = 0; i < size; i++)
            {
                for (int k = 0; k < i; k++)
                {
                    b[i] -= _cells[(i * N) + k] * b[k];
                }

                b[i] /= _cells[(i * N) + i];
            }

            for (int i = size - 1; i >= 0; i--)
            {
                for (int k = i + 1; k < size; k++)
                {
                    b[i] -= _cells[(k * N) + i] * b[k];
                }

                b[i] /= _cells[(i * N) + i];
            }
        }
    }
}
