using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>The numbers that the assessment of the hand rests on, taken from the evidence by id once; a missing one fails at once.</summary>
/// <param name="table">Evidence with every entry that starts with "hand.".</param>
/// <exception cref="KeyNotFoundException">An entry is missing.</exception>
public sealed class HandCoefficients(NumberTable table)
{
    /// <summary>Where they were taken from.</summary>
    internal NumberTable Numbers { get; } = table;

    private readonly double[,] _tremorMiss = new[,]
    {
        { 0, table.Value("hand.tremor-some-miss-none"), table.Value("hand.tremor-marked-miss-none") },
        { 0, table.Value("hand.tremor-some-miss-some"), table.Value("hand.tremor-marked-miss-some") },
        { 0, table.Value("hand.tremor-some-miss-much"), table.Value("hand.tremor-marked-miss-much") },
    };

    private readonly double[] _tremorTime = [1, table.Value("hand.tremor-some-time"), table.Value("hand.tremor-marked-time")];

    private readonly double[] _pressShare =
        [1, table.Value("hand.press-share-whole-hand"), table.Value("hand.press-share-palm"), table.Value("hand.press-share-forearm"), 0];

    /// <summary>Greatest force for a control that one hand works without tight grasp, pinch or twist, N.</summary>
    public double AccessibleForce { get; } = table.Value("hand.accessible-force");

    /// <summary>Demand over acceptable force up to which there is no concern.</summary>
    public double RatioOk { get; } = table.Value("hand.ratio-ok");

    /// <summary>Demand over acceptable force up to which caution is enough.</summary>
    public double RatioCaution { get; } = table.Value("hand.ratio-caution");

    /// <summary>Demand over acceptable force above which an operation is not feasible.</summary>
    public double RatioPoor { get; } = table.Value("hand.ratio-poor");

    internal EnduranceLaw Endurance { get; } = new(table.Value("hand.endurance-grip-b0"), table.Value("hand.endurance-grip-b1"));

    internal double EnduranceCaution { get; } = table.Value("hand.endurance-caution");

    internal double EffortExponent { get; } = table.Value("hand.effort-exponent");

    internal double EffortDaySeconds { get; } = table.Value("hand.effort-day");

    internal double SlownessSlow { get; } = table.Value("hand.slowness-slow");

    internal double SlownessCannot { get; } = table.Value("hand.slowness-cannot");

    internal double HoldSafety { get; } = table.Value("hand.hold-safety");

    internal double HoldFriction { get; } = table.Value("hand.hold-friction");

    internal double HandBreadth { get; } = table.Value("hand.hand-breadth");

    internal double CentreOfMassShare { get; } = table.Value("hand.centre-of-mass-share");

    internal double GripErrorNewtons { get; } = table.Value("hand.grip-error");

    internal double PinchErrorNewtons { get; } = table.Value("hand.pinch-error");

    internal double ErrorShareCap { get; } = table.Value("hand.error-share-cap");

    internal double GripShareWholeHandOnly { get; } = table.Value("hand.grip-share-whole-hand-only");

    internal double PinchShareOfGrip { get; } = table.Value("hand.pinch-share-of-grip");

    internal double PinchBeyondNormsLogSd { get; } = table.Value("hand.pinch-beyond-norms-log-sd");

    internal double PalmShareOfGrip { get; } = table.Value("hand.palm-share-of-grip");

    internal double ForearmShareOfGrip { get; } = table.Value("hand.forearm-share-of-grip");

    internal double PressFollowsGrip { get; } = table.Value("hand.press-follows-grip");

    internal double PinchFollowsGrip { get; } = table.Value("hand.pinch-follows-grip");

    internal double SharingLogSd { get; } = table.Value("hand.sharing-log-sd");

    internal double ReportedLogSd { get; } = table.Value("hand.reported-log-sd");

    /// <summary>Worth of handling where another person cleans.</summary>
    internal double Helped { get; } = table.Value("hand.value-helped");

    /// <summary>What a ratio of demand to acceptable force is worth, 1 to 0.</summary>
    internal PiecewiseLinear Worth { get; } = new(
        [0, table.Value("hand.ratio-ok"), table.Value("hand.ratio-caution"), table.Value("hand.ratio-poor")],
        [1, table.Value("hand.value-at-ok"), table.Value("hand.value-at-caution"), 0]);

    /// <summary>Chance that one go fails for want of strength.</summary>
    internal PiecewiseLinear Strain { get; } = new(
        [table.Value("hand.ratio-ok"), table.Value("hand.ratio-caution"), table.Value("hand.ratio-poor")],
        [0, table.Value("hand.failure-at-caution"), table.Value("hand.failure-at-poor")]);

    private PiecewiseLinear MissSome { get; } = new(
        [1, table.Value("hand.slowness-slow"), table.Value("hand.slowness-cannot")],
        [table.Value("hand.miss-some-usual"), table.Value("hand.miss-some-slow"), table.Value("hand.miss-some-cannot")]);

    private PiecewiseLinear MissMuch { get; } = new(
        [1, table.Value("hand.slowness-slow"), table.Value("hand.slowness-cannot")],
        [table.Value("hand.miss-much-usual"), table.Value("hand.miss-much-slow"), table.Value("hand.miss-much-cannot")]);

    /// <summary>Share of the usual arm force that is left for pressing, by best usable grasp.</summary>
    internal double PressShare(Grasp best) => _pressShare[(int)best];

    /// <summary>How many times longer fine handling takes with tremor.</summary>
    internal double TremorTime(Tremor tremor) => _tremorTime[(int)tremor];

    /// <summary>Chance that one go fails because of tremor.</summary>
    internal double TremorMiss(Tremor tremor, FineHandling fine) => _tremorMiss[(int)fine, (int)tremor];

    /// <summary>Chance that one go fails because small things slip.</summary>
    internal double SlowMiss(double slowness, FineHandling fine) => fine switch
    {
        FineHandling.Some => MissSome.At(slowness),
        FineHandling.Much => MissMuch.At(slowness),
        _ => 0,
    };
}
