using System.Runtime.InteropServices;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Turns a posture, an approach, a person and precautions into the box and the scene that the solver sees, or into a reason
/// why it is forbidden.</summary>
internal static class PostureSetting
{
    /// <summary>Angles that differ by less are the same.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Prepares one posture and approach.</summary>
    /// <returns>Null when it may be used, else the id of the reason.</returns>
    public static string? Prepare(
        ReachNumbers numbers,
        PostureNumbers posture,
        Approach approach,
        in PersonDraw person,
        ReadOnlySpan<ReachPrecaution> precautions,
        out JointBox box,
        out Scene scene)
    {
        var most = new Limits
        {
            Ranges = person.Ranges,
            Lean = Math.Min(posture.LeanHigh, person.Ranges[JointMotion.TrunkFlexion]),
            Bend = Math.Min(posture.Bend, person.Ranges[JointMotion.TrunkSideBend]),
            Twist = person.Ranges[JointMotion.TrunkRotation],
            TooLow = "cannot-lean-forward",
            TooNarrow = "cannot-lean-sideways",
        };
        if (!posture.IsLying)
        {
            most.Lean = Math.Min(most.Lean, person.LeanForward);
            most.Bend = Math.Min(most.Bend, person.LeanSideways);
        }

        string? reason = posture.Posture == Posture.Reclined && approach != Approach.Front ? "lies-on-it" : null;
        foreach (ReachPrecaution precaution in precautions)
        {
            string? why = Restrict(numbers, precaution, posture, approach, ref most);
            reason ??= why;
        }

        double leanHigh = Math.Max(most.Lean, 0);
        if (leanHigh < posture.LeanLow)
        {
            reason ??= most.TooLow;
            leanHigh = posture.LeanLow;
        }

        if (approach == Approach.Front)
        {
            leanHigh = posture.LeanLow + (person.FrontFreedom * (leanHigh - posture.LeanLow));
        }

        double bendLow = -most.Bend, bendHigh = most.Bend;
        if (posture.HasSeat && approach == Approach.Side)
        {
            // The side approach goes under the buttock that is lifted by leaning off it.
            double lift = numbers.SideLeastBend;
            reason ??= most.Bend < lift ? most.TooNarrow : null;
            (bendLow, bendHigh) = (-Math.Max(most.Bend, lift), -lift);
        }

        box = Box(numbers, posture, in most, leanHigh, bendLow, bendHigh);
        scene = Place(numbers, posture, approach, in person);
        return reason;
    }

    private static JointBox Box(ReachNumbers numbers, PostureNumbers posture, in Limits most, double leanHigh, double bendLow, double bendHigh)
    {
        JointRanges r = most.Ranges;
        JointBox box = default;
        box.Low = new JointVector(
            posture.LeanLow,
            bendLow,
            -Math.Min(most.Twist, posture.TwistForward),
            -r[JointMotion.ShoulderExtension],
            -r[JointMotion.ShoulderAdduction],
            -r[JointMotion.ShoulderExternalRotation],
            Math.Min(r[JointMotion.ElbowExtensionLag], r[JointMotion.ElbowFlexion]));
        box.High = new JointVector(
            leanHigh,
            bendHigh,
            Math.Min(most.Twist, posture.TwistBack),
            Math.Min(r[JointMotion.ShoulderFlexion], numbers.UpperArmForwardMost),
            Math.Min(r[JointMotion.ShoulderAbduction], numbers.UpperArmSidewaysMost),
            r[JointMotion.ShoulderInternalRotation],
            r[JointMotion.ElbowFlexion]);
        return box;
    }

    /// <summary>Solids and target of a posture.</summary>
    public static Scene Place(ReachNumbers numbers, PostureNumbers posture, Approach approach, in PersonDraw person)
    {
        Body body = person.Body;
        JointRanges r = person.Ranges;
        (double sf, double cf) = Math.SinCos(posture.ThighFlexion);
        (double sp, double cp) = Math.SinCos(posture.ThighParting * (approach == Approach.Front ? person.FrontFreedom : 1));
        Scene scene = default;
        scene.PelvisLean = posture.PelvisLean * (approach == Approach.Front ? numbers.FrontPelvisFactor : 1);
        scene.PelvisBend = posture.PelvisBend;
        scene.TrunkInverse = new Vector3D(
            Inverse(r[JointMotion.TrunkFlexion]), Inverse(r[JointMotion.TrunkSideBend]), Inverse(r[JointMotion.TrunkRotation]));
        scene.HasSeat = posture.HasSeat;
        scene.SeatUp = body.SeatUp - (posture.Posture == Posture.SeatedLeaningForward ? body.SeatRise : 0);
        scene.Mattress = posture.Posture switch
        {
            Posture.SideLying => Mattress.Beside,
            Posture.Reclined => Mattress.Behind,
            _ => Mattress.None,
        };
        scene.Thigh = new Vector3D(sf * cp, sp, -cf * cp);
        (double st, double ct) = Math.SinCos(numbers.TargetBehindLowest);
        scene.Target = new Vector3D(-body.PelvisForward * st, 0, -body.PelvisUp * ct);
        (scene.WedgeX, scene.WedgeY) = approach switch
        {
            Approach.Behind => (-1.0, 0.0),
            Approach.Front => (1.0, 0.0),
            _ => (0.0, 1.0),
        };
        (scene.WedgeSine, scene.WedgeCosine) = Math.SinCos(numbers.HalfAngle(approach));
        scene.Pronation = r[JointMotion.ForearmPronation];
        scene.Supination = r[JointMotion.ForearmSupination];
        scene.Deviation = r[JointMotion.UlnarDeviation];
        return scene;
    }

    private static double Inverse(double range) => range > Rounding ? 1 / range : 0;

    /// <summary>Takes what a precaution forbids out of the limits.</summary>
    /// <returns>Null when posture and approach may still be used, else the id of the reason.</returns>
    private static string? Restrict(ReachNumbers numbers, ReachPrecaution precaution, PostureNumbers posture, Approach approach, ref Limits most)
    {
        PrecautionNumbers limit = numbers.Precautions;
        switch (precaution)
        {
            case ReachPrecaution.HipFlexionLimit:
                const string Hip = "hip-flexion-limit";
                double lean = limit.HipFlexionLimit - posture.ThighFlexion;
                Lean(numbers, posture, Hip, lean, double.PositiveInfinity, ref most);
                most.Twist = Math.Min(most.Twist, limit.HipTwist);
                return lean < -Rounding ? Hip : null;
            case ReachPrecaution.NoTwistingOrBending:
                Lean(numbers, posture, "no-twisting-or-bending", limit.SpineBend, limit.SpineBend, ref most);
                most.Twist = Math.Min(most.Twist, limit.SpineBend);
                return null;
            case ReachPrecaution.Sternal:
                Cap(ref most.Ranges, JointMotion.ShoulderAbduction, limit.SternalAbduction);
                Cap(ref most.Ranges, JointMotion.ShoulderExtension, limit.SternalExtension);
                return approach == Approach.Behind ? "sternal" : null;
            case ReachPrecaution.ShoulderSurgery:
                Cap(ref most.Ranges, JointMotion.ShoulderExtension, limit.ShoulderSurgeryExtension);
                Cap(ref most.Ranges, JointMotion.ShoulderInternalRotation, limit.ShoulderSurgeryInternalRotation);
                return approach == Approach.Behind ? "shoulder-surgery" : null;
            case ReachPrecaution.NoWeightThroughHand:
                const string Weight = "no-weight-through-hand";
                Lean(numbers, posture, Weight, limit.NoWeightLeanForward, limit.NoWeightLeanSideways, ref most);
                return posture.Posture == Posture.HalfStanding ? Weight : null;
            default:
                throw new ArgumentOutOfRangeException(nameof(precaution), precaution, "not a precaution");
        }
    }

    /// <summary>Limits lean and side bend. A precaution is named as the reason only where it alone leaves too little.</summary>
    private static void Lean(ReachNumbers numbers, PostureNumbers posture, string reason, double forward, double sideways, ref Limits most)
    {
        most.Lean = Math.Min(most.Lean, forward);
        most.Bend = Math.Min(most.Bend, sideways);
        most.TooLow = forward < posture.LeanLow ? reason : most.TooLow;
        most.TooNarrow = sideways < numbers.SideLeastBend ? reason : most.TooNarrow;
    }

    private static void Cap(ref JointRanges r, JointMotion motion, double limit) => r[motion] = Math.Min(r[motion], limit);

    /// <summary>How far joints, trunk and balance go, and what to say where that is too little for a posture.</summary>
    [StructLayout(LayoutKind.Auto)]
    private struct Limits
    {
        public JointRanges Ranges;
        public double Lean;
        public double Bend;
        public double Twist;
        public string TooLow;
        public string TooNarrow;
    }
}
