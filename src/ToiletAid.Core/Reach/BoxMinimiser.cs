namespace ToiletAid.Core.Reach;

/// <summary>Least value of a reach objective over a box of joint ranges: projected Gauss-Newton steps with Levenberg and Marquardt's
/// damping, from a start.</summary>
/// <remarks>The stiff solids make narrow curved valleys. Their steep sides come from squares of depths, whose curvature follows from first
/// differences, so that steps along the valley can be long. Limits that the slope presses against are held (Bertsekas 1982, from
/// memory). Deterministic; no heap.</remarks>
internal static class BoxMinimiser
{
    private const int N = JointVector.Count;
    private const uint AllPlaces = (1u << Eight.Count) - 1;

    // How damping follows the gain is usual for the method (from memory). Damping, gains and distances are for a stature of one, so that bodies of all
    // sizes are solved alike.
    private const double FirstDamping = 0.06;
    internal const double LeastDamping = 1e-6;
    private const int MostAttempts = 14;

    /// <summary>Share of the expected gain above which the model is trusted more.</summary>
    internal const double GoodShare = 0.75;

    /// <summary>Share of the expected gain up to which it is trusted less.</summary>
    internal const double PoorShare = 0.25;
    internal const double Relaxing = 0.2;
    internal const double Tightening = 5;

    /// <summary>Factor where the step was so cut off that it would not go down at all.</summary>
    internal const double TighteningAtLimits = 25;
    private const double NoGain = 1e-10;

    /// <summary>Nearer to where the way touches, curvature is taken as here: it goes to infinity at that point.</summary>
    internal const double NearestTouch = 0.006;

    /// <summary>Goes down from <paramref name="q"/>, which is replaced by the best point found.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    /// <param name="q">Start, inside the box; end on return.</param>
    /// <param name="rounds">Largest number of steps.</param>
    /// <param name="tolerance">Stops when two steps in a row gain less than this share of the stature.</param>
    /// <returns>The value there, m.</returns>
    public static double Descend(
        in ReachObjective objective,
        in JointBox box,
        ref JointVector q,
        int rounds,
        double tolerance)
    {
        JointAngles angles = objective.Angles(in q);
        objective.Try(in angles, out ReachTrial first);
        ReachTrial second = default;

        // Two places that change their parts: a trial is large, and copying it takes as long as some of its own work.
        ref ReachTrial here = ref first, there = ref second;
        double unit = objective.Unit, damping = FirstDamping * unit;
        int weak = 0;
        for (int round = 0; round < rounds && weak < 2; round++)
        {
            objective.Slopes(in angles, in here, out ReachSlopes slopes);
            SymmetricMatrix curvature = Curvature(in objective, in here, in slopes);
            bool moved = false;
            for (int attempt = 0; attempt < MostAttempts && !moved; attempt++)
            {
                JointVector next = Step(in curvature, in box, in q, in slopes.Value, damping, out double expected);
                if (expected > -NoGain * unit)
                {
                    // Cut off at the limits, the step would not go down; a more damped one keeps closer to the slope.
                    damping *= TighteningAtLimits;
                    continue;
                }

                JointAngles nextAngles = objective.Angles(in next);
                objective.Try(in nextAngles, out there);
                double gain = here.Value - there.Value;
                double share = gain / -expected;
                damping *= share > GoodShare ? Relaxing : (share > PoorShare ? 1 : Tightening);
                if (gain > 0)
                {
                    moved = true;
                    weak = gain < tolerance * unit ? weak + 1 : 0;
                    q = next;
                    angles = nextAngles;
                    ref ReachTrial before = ref here;
                    here = ref there;
                    there = ref before;
                }
            }

            if (!moved)
            {
                break;
            }

            damping = Math.Max(damping, LeastDamping * unit);
        }

        return here.Value;
    }

    /// <summary>Slope (gradient) at a point, m/rad.</summary>
    public static JointVector Slope(in ReachObjective objective, in JointVector q)
    {
        JointAngles angles = objective.Angles(in q);
        objective.Try(in angles, out ReachTrial here);
        objective.Slopes(in angles, in here, out ReachSlopes slopes);
        return slopes.Value;
    }

    /// <summary>Curvature (the Gauss-Newton part of the Hessian), m/rad²: of the distance to where the way touches (across the line, one over the distance), of the squares of the
    /// depths, and of the handle's bend.</summary>
    private static SymmetricMatrix Curvature(in ReachObjective objective, in ReachTrial here, in ReachSlopes slopes)
    {
        SymmetricMatrix curvature = default;
        Vector3D line = here.Grip - here.Touch;
        double inverse = 1 / Math.Max(line.Length, NearestTouch * objective.Unit);
        JointVector along = default;
        along.All = slopes.Grip.Along(inverse * line);
        for (int i = 0; i < N; i++)
        {
            curvature.Row(i) = slopes.Grip.Along(inverse * slopes.Grip[i]) - (inverse * along[i] * along.All);
        }

        double pressure = 2 * objective.Pressure(here.Pressed);
        JointVector total = default;
        for (int k = 0; k < slopes.Count; k++)
        {
            curvature.Add(pressure, in slopes.Depth[k]);
            total.All += 2 * here.Depth[slopes.Which[k]] * slopes.Depth[k].All;
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

        return curvature;
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
        Eight at = q.All;
        Eight down = slope.All;
        uint held = (Eight.NotAbove(at, box.Low.All) & Eight.Above(down, default)) | (Eight.NotAbove(box.High.All, at) & Eight.Above(default, down));
        JointVector step = default;

        // Where the step would leave the box it goes to the limit, and the others are solved again around that.
        for (int pass = 0; pass < 4; pass++)
        {
            curvature.SolveFree(held, damping, in slope, ref step);
            Eight there = at + step.All, inside = box.Clamp(there);
            uint outside = ~held & ~Eight.Equals(there, inside) & AllPlaces;
            step.All = Eight.SelectEqual(there, inside, step.All, inside - at);
            if (outside == 0)
            {
                break;
            }

            held |= outside;
        }

        JointVector next = default;
        next.All = box.Clamp(at + step.All);
        step.All = next.All - at;
        expected = JointVector.Dot(in slope, in step);
        expected += 0.5 * curvature.Along(in step);
        return next;
    }
}
