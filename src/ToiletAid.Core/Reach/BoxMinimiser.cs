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
    /// <param name="giveUpAbove">Stops as soon as the rounds that are left, each gaining as much as the last one, would not come down to
    /// this, m.</param>
    /// <returns>The value there, m.</returns>
    public static double Descend(
        in ReachObjective objective,
        in JointBox box,
        ref JointVector q,
        int rounds,
        double tolerance,
        double giveUpAbove = double.PositiveInfinity)
    {
        JointAngles angles = objective.Angles(in q);
        objective.Try(in angles, ReachObjective.Everything, out ReachTrial here);
        double unit = objective.Unit, damping = 0.06 * unit;
        int weak = 0;
        bool hopeless = false;
        for (int round = 0; round < rounds && weak < 2 && !hopeless; round++)
        {
            SymmetricMatrix curvature = default;
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
                    hopeless = there.Value - ((rounds - round - 1) * gain) > giveUpAbove;
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
    private static void AddCurvature(in ReachObjective objective, in ReachTrial here, in ReachSlopes slopes, ref SymmetricMatrix curvature)
    {
        Space line = here.Grip - here.Touch;
        double inverse = 1 / Math.Max(line.Length, 0.006 * objective.Unit);
        Space n = inverse * line;
        JointVector along = default;
        for (int i = 0; i < N; i++)
        {
            along[i] = Space.Dot(n, slopes.Grip[i]);
            Space grip = inverse * slopes.Grip[i];
            double share = inverse * along[i];
            ref double row = ref curvature.Row(i);
            for (int j = 0; j <= i; j++)
            {
                Unsafe.Add(ref row, j) += Space.Dot(grip, slopes.Grip[j]) - (share * along[j]);
            }
        }

        double pressure = 2 * objective.Pressure(here.Pressed);
        JointVector total = default;
        for (int k = 0; k < slopes.Count; k++)
        {
            double twice = 2 * here.Depth[slopes.Which[k]];
            curvature.Add(pressure, in slopes.Depth[k]);
            for (int i = 0; i < N; i++)
            {
                total[i] += twice * slopes.Depth[k][i];
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
        in SymmetricMatrix curvature,
        in JointBox box,
        in JointVector q,
        in JointVector slope,
        double damping,
        out double expected)
    {
        // Bits of the joints that are held at a limit.
        uint held = 0;
        JointVector step = default;
        for (int i = 0; i < N; i++)
        {
            held |= (q[i] <= box.Low[i] && slope[i] > 0) || (q[i] >= box.High[i] && slope[i] < 0) ? 1u << i : 0;
        }

        // Where the step would leave the box it goes to the limit, and the others are solved again around that.
        bool again = true;
        for (int pass = 0; pass < 4 && again; pass++)
        {
            again = false;
            JointVector free = step;
            curvature.SolveFree(held, damping, in slope, ref free);
            for (int i = 0; i < N; i++)
            {
                if ((held & (1u << i)) != 0)
                {
                    continue;
                }

                double there = q[i] + free[i], inside = Math.Min(Math.Max(there, box.Low[i]), box.High[i]);
                step[i] = inside - q[i];
                if (inside != there)
                {
                    held |= 1u << i;
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
}
