using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>From what is known of a hand to how strong it may be.</summary>
public static class CapacityEstimate
{
    // z-scores at which a measured value's error is known: five and ninety-five in a hundred, and the quartiles between.
    private static readonly double[] ErrorLevels = [-1.6448536269514722, -0.67448975019608171, 0, 0.67448975019608171, 1.6448536269514722];

    /// <summary>The strength of a hand in each grasp.</summary>
    /// <param name="facts">What is known of it.</param>
    /// <param name="norms">Norms for what was not measured.</param>
    /// <param name="coefficients">Coefficients.</param>
    /// <remarks>Measured values count where there are any, with the error of the instrument; otherwise the norm for age and sex, less where the best
    /// grasp is coarser. A grasp finer than the best usable one has no strength, whatever an instrument showed: the person does not use it.
    /// Pressing is work of the arm: a share of the grip norm, less when the measured grip is below its norm. Where a hand only presses, it is
    /// at least as slow with small things as one that cannot handle them.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Age, a force or a time is not a number in its range.</exception>
    public static HandCapacity Of(HandFacts facts, HandNorms norms, HandCoefficients coefficients)
    {
        Check(facts);
        var grip = norms.Grip.For(facts.AgeYears, facts.Sex);
        var pinch = norms.Pinch(facts.AgeYears, facts.Sex);
        double told = facts.GraspObtained == HowObtained.Reported ? coefficients.ReportedLogSd : 0;
        double gripOfNorm = facts.GripNewtons is { } measured ? Math.Min(measured / grip.Curve.Median, 1) : 1;

        bool grips = facts.BestGrasp is Grasp.FinePinch or Grasp.WholeHand;
        bool pinches = facts.BestGrasp is Grasp.FinePinch;
        double palm = Palm(facts.BestGrasp, gripOfNorm, coefficients);
        double armLogSd = Hypotenuse(coefficients.SharingLogSd, told);
        bool presses = facts.BestGrasp is not Grasp.PressWithForearm;

        return new(
            pinches ? Pinch(facts, pinch, gripOfNorm, told, coefficients) : NormCurve.Zero,
            grips ? Grip(facts, grip.Curve, told, coefficients) : NormCurve.Zero,
            presses ? grip.Curve.Scaled(palm * coefficients.PalmShareOfGrip, armLogSd) : NormCurve.Zero,
            grip.Curve.Scaled(coefficients.PressShare(facts.BestGrasp) * coefficients.ForearmShareOfGrip, armLogSd))
        {
            IsOutsideNorms = (facts.GripNewtons is null && grip.IsOutsideTable) || (pinches && facts.PinchNewtons is null && pinch.IsOutsideTable),
            MeasurementAndGraspDisagree = (!grips && facts.GripNewtons > 0) || (!pinches && facts.PinchNewtons > 0),
            Slowness = Slowness(facts, norms, coefficients),
        };
    }

    /// <summary>Share of the usual force with palm or fist: in a hand that grips, less where the measured grip is below its norm, down to nothing; a hand
    /// that was seen to press does so whatever it grips. The forearm does not follow the hand.</summary>
    private static double Palm(Grasp best, double gripOfNorm, HandCoefficients coefficients) =>
        coefficients.PressShare(best) * (best is Grasp.FinePinch or Grasp.WholeHand ? Math.Pow(gripOfNorm, coefficients.PressFollowsGrip) : 1);

    private static NormCurve Grip(HandFacts facts, NormCurve norm, double told, HandCoefficients coefficients)
    {
        if (facts.GripNewtons is { } measured)
        {
            return Measured(measured, coefficients.GripErrorNewtons, coefficients);
        }

        return facts.BestGrasp == Grasp.FinePinch
            ? norm.Scaled(1, told)
            : norm.Scaled(coefficients.GripShareWholeHandOnly, Hypotenuse(coefficients.SharingLogSd, told));
    }

    private static NormCurve Pinch(HandFacts facts, NormLookup norm, double gripOfNorm, double told, HandCoefficients coefficients) =>
        facts.PinchNewtons is { } measured
            ? Measured(measured, coefficients.PinchErrorNewtons, coefficients)
            : norm.Curve.Scaled(Math.Pow(gripOfNorm, coefficients.PinchFollowsGrip), norm.IsOutsideTable ? Hypotenuse(coefficients.PinchBeyondNormsLogSd, told) : told);

    private static NormCurve Measured(double newtons, double error, HandCoefficients coefficients) => newtons > 0
        ? NormCurve.Normal(newtons, Math.Min(error, coefficients.ErrorShareCap * newtons), ErrorLevels)
        : NormCurve.Zero;

    private static double Slowness(HandFacts facts, HandNorms norms, HandCoefficients coefficients)
    {
        double told = facts.Dexterity switch
        {
            Dexterity.Slow => coefficients.SlownessSlow,
            Dexterity.Cannot => coefficients.SlownessCannot,
            _ => 1,
        };
        double shown = facts.PegSeconds is { } seconds
            ? Math.Max(seconds / norms.NineHolePeg.For(facts.AgeYears, facts.Sex).Curve.Median, 1)
            : told;
        bool takesUp = facts.BestGrasp is Grasp.FinePinch or Grasp.WholeHand;
        return takesUp ? shown : Math.Max(shown, coefficients.SlownessCannot);
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static void Check(HandFacts facts)
    {
        bool sound = facts.AgeYears > 0 && double.IsFinite(facts.AgeYears) && facts.CleansPerDay > 0 && double.IsFinite(facts.CleansPerDay)
            && facts.HandsFree is 1 or 2
            && facts.GripNewtons is null or (>= 0 and < double.PositiveInfinity)
            && facts.PinchNewtons is null or (>= 0 and < double.PositiveInfinity)
            && facts.PegSeconds is null or (> 0 and < double.PositiveInfinity);
        if (!sound)
        {
            throw new ArgumentOutOfRangeException(nameof(facts), facts, "age, cleans, hands, force or time out of range");
        }
    }
}
