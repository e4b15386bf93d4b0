using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Turns a posture, an approach, a person and precautions into the box and the scene that the solver sees, or into a reason
/// why it is forbidden.</summary>
internal static class PostureSetting
{
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
        JointRanges r = person.Ranges;
        double leanHigh = Math.Min(posture.LeanHigh, r[JointMotion.TrunkFlexion]);
        double bend = Math.Min(posture.Bend, r[JointMotion.TrunkSideBend]);
        double twist = Math.Min(posture.Twist, r[JointMotion.TrunkRotation]);
        if (!posture.IsLying)
        {
            leanHigh = Math.Min(leanHigh, person.LeanForward);
            bend = Math.Min(bend, person.LeanSideways);
        }

        string? reason = posture.Posture == Posture.Reclined && approach != Approach.Front ? "lies-on-it" : null;
        string tooLow = "cannot-lean-forward", tooNarrow = "cannot-lean-sideways";
        foreach (ReachPrecaution precaution in precautions)
        {
            string? why = Restrict(numbers, precaution, posture, approach, ref r, ref leanHigh, ref bend, ref twist, ref tooLow, ref tooNarrow);
            reason ??= why;
        }

        leanHigh = Math.Max(leanHigh, 0);
        if (leanHigh < posture.LeanLow)
        {
            reason ??= tooLow;
            leanHigh = posture.LeanLow;
        }

        if (approach == Approach.Front)
        {
            leanHigh = posture.LeanLow + (person.FrontFreedom * (leanHigh - posture.LeanLow));
        }

        double bendHigh = bend;
        if (posture.HasSeat && approach == Approach.Side)
        {
            // The side approach goes under the buttock that is lifted by leaning off it.
            double lift = numbers["approach.side.least-bend"];
            reason ??= bend < lift ? tooNarrow : null;
            (bendHigh, bend) = (-lift, Math.Max(bend, lift));
        }

        box.Low = new JointVector(
            posture.LeanLow,
            -bend,
            -twist,
            -r[JointMotion.ShoulderExtension],
            -r[JointMotion.ShoulderAdduction],
            -r[JointMotion.ShoulderExternalRotation],
            Math.Min(r[JointMotion.ElbowExtensionLag], r[JointMotion.ElbowFlexion]));
        box.High = new JointVector(
            leanHigh,
            bendHigh,
            twist,
            Math.Min(r[JointMotion.ShoulderFlexion], numbers["solver.upper-arm-forward-most"]),
            Math.Min(r[JointMotion.ShoulderAbduction], numbers["solver.upper-arm-sideways-most"]),
            r[JointMotion.ShoulderInternalRotation],
            r[JointMotion.ElbowFlexion]);
        scene = Place(numbers, posture, approach, in person);
        return reason;
    }

    /// <summary>Solids and target of a posture.</summary>
    public static Scene Place(ReachNumbers numbers, PostureNumbers posture, Approach approach, in PersonDraw person)
    {
        Body body = person.Body;
        JointRanges r = person.Ranges;
        (double sf, double cf) = Math.SinCos(posture.ThighFlexion);
        (double sp, double cp) = Math.SinCos(posture.ThighParting * (approach == Approach.Front ? person.FrontFreedom : 1));
        Scene scene = default;
        scene.PelvisLean = posture.PelvisLean * (approach == Approach.Front ? numbers["approach.front.pelvis-factor"] : 1);
        scene.PelvisBend = posture.PelvisBend;
        scene.HasSeat = posture.HasSeat;
        scene.SeatUp = body.SeatUp - (posture.Posture == Posture.SeatedLeaningForward ? body.SeatRise : 0);
        scene.Mattress = posture.Posture switch
        {
            Posture.SideLying => 1,
            Posture.Reclined => 2,
            _ => 0,
        };
        scene.Thigh = new Space(sf * cp, sp, -cf * cp);
        (double st, double ct) = Math.SinCos(numbers["target.behind-lowest-point"]);
        scene.Target = new Space(-body.PelvisForward * st, 0, -body.PelvisUp * ct);
        (scene.WedgeX, scene.WedgeY, string word) = approach switch
        {
            Approach.Behind => (-1.0, 0.0, "behind"),
            Approach.Front => (1.0, 0.0, "front"),
            _ => (0.0, 1.0, "side"),
        };
        (scene.WedgeSine, scene.WedgeCosine) = Math.SinCos(numbers[$"approach.{word}.half-angle"]);
        scene.Pronation = r[JointMotion.ForearmPronation];
        scene.Supination = r[JointMotion.ForearmSupination];
        scene.Deviation = r[JointMotion.UlnarDeviation];
        return scene;
    }

    private static string? Restrict(
        ReachNumbers numbers,
        ReachPrecaution precaution,
        PostureNumbers posture,
        Approach approach,
        ref JointRanges r,
        ref double lean,
        ref double bend,
        ref double twist,
        ref string tooLow,
        ref string tooNarrow)
    {
        switch (precaution)
        {
            case ReachPrecaution.HipFlexionLimit:
                lean = Math.Min(lean, numbers["precaution.hip-flexion-limit"] - posture.ThighFlexion);
                twist = Math.Min(twist, numbers["precaution.hip-twist"]);
                tooLow = "hip-flexion-limit";
                return lean < -1e-9 ? "hip-flexion-limit" : null;
            case ReachPrecaution.NoTwistingOrBending:
                lean = Math.Min(lean, numbers["precaution.spine-bend"]);
                bend = Math.Min(bend, numbers["precaution.spine-bend"]);
                twist = Math.Min(twist, numbers["precaution.spine-bend"]);
                tooLow = tooNarrow = "no-twisting-or-bending";
                return null;
            case ReachPrecaution.Sternal:
                Cap(ref r, JointMotion.ShoulderAbduction, numbers["precaution.sternal.abduction"]);
                Cap(ref r, JointMotion.ShoulderExtension, numbers["precaution.sternal.extension"]);
                return approach == Approach.Behind ? "sternal" : null;
            case ReachPrecaution.ShoulderSurgery:
                Cap(ref r, JointMotion.ShoulderExtension, numbers["precaution.shoulder-surgery.extension"]);
                Cap(ref r, JointMotion.ShoulderInternalRotation, numbers["precaution.shoulder-surgery.internal-rotation"]);
                return approach == Approach.Behind ? "shoulder-surgery" : null;
            case ReachPrecaution.NoWeightThroughHand:
                lean = Math.Min(lean, numbers["precaution.no-weight.lean-forward"]);
                bend = Math.Min(bend, numbers["precaution.no-weight.lean-sideways"]);
                tooLow = tooNarrow = "no-weight-through-hand";
                return posture.Posture == Posture.HalfStanding ? "no-weight-through-hand" : null;
            default:
                throw new ArgumentOutOfRangeException(nameof(precaution), precaution, "not a precaution");
        }
    }

    private static void Cap(ref JointRanges r, JointMotion motion, double limit) => r[motion] = Math.Min(r[motion], limit);
}
