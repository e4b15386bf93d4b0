using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Tests.Advising;
using ToiletAid.Core.Tests.Trials;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>Points of a fall, worked by hand from the entries "falls." of <c>evidence.json</c>: what the plan asks of balance, then what the person brings.</summary>
public sealed class FallRiskTests
{
    [Theory]
    [InlineData(Posture.Seated, Approach.Behind, 0)]
    [InlineData(Posture.Seated, Approach.Side, 1)]
    [InlineData(Posture.SeatedLeaningForward, Approach.Behind, 1)]
    [InlineData(Posture.HalfStanding, Approach.Behind, 2)]
    [InlineData(Posture.Standing, Approach.Behind, 2)]
    [InlineData(Posture.SideLying, Approach.Side, 0)]
    [InlineData(Posture.Reclined, Approach.Front, 0)]
    public void A_plan_asks_more_or_less_of_balance(Posture posture, Approach approach, double points) => Assert.Equal(points, Points(Cases.Able, TrialCases.Plan("by-hand", null, approach, posture)));

    /// <summary>All that a person can bring, to a plan that asks for a lean; and nothing of it where the plan asks nothing of balance.</summary>
    [Theory]
    [InlineData("age", "75", 2)]
    [InlineData("age", "74", 1)]
    [InlineData("lean", "not-at-all", 3)]
    [InlineData("lean", "forward", 1)]
    [InlineData("precautions", "dizzy-when-leaning", 3)]
    [InlineData("precautions", "no-weight-on-a-leg", 2)]
    [InlineData("precautions", "dizzy-when-leaning no-weight-on-a-leg", 4)]
    [InlineData("tremor", "marked", 2)]
    [InlineData("tremor", "some", 1)]
    [InlineData("sight", "none", 2)]
    [InlineData("sight", "low", 1)]
    [InlineData("steps", "one", 2)]
    [InlineData("steps", "two-or-three", 1)]
    public void A_person_brings_more_or_less_to_it(string question, string answer, double points)
    {
        var known = question == "age" ? Cases.Able.Choose(question, int.Parse(answer, System.Globalization.CultureInfo.InvariantCulture))
            : question == "precautions" ? Cases.Able.Mark(question, [.. answer.Split(' ')])
            : Cases.Able.Choose(question, answer);

        Assert.Equal(points, Points(known, TrialCases.Plan("by-hand", posture: Posture.SeatedLeaningForward)));
        Assert.Equal(0, Points(known, TrialCases.Plan("by-hand")));
        Assert.Equal(0, Points(known, TrialCases.Plan("by-hand", posture: Posture.Reclined)));
    }

    [Fact]
    public void All_that_somebody_brings_adds_up()
    {
        var known = Cases.Able.Choose("age", 80).Choose("lean", "not-at-all").Mark("precautions", "dizzy-when-leaning", "no-weight-on-a-leg").Choose("tremor", "marked").Choose("sight", "none").Choose("steps", "one");

        Assert.Equal(2 + 1 + 2 + 2 + 1 + 1 + 1 + 1, Points(known, TrialCases.Plan("by-hand", posture: Posture.Standing)));
        Assert.Equal(0, Points(known, TrialCases.Plan("helper-wipe", posture: Posture.Standing)));
    }

    /// <summary>Below 1.52 m the feet hang from a seat, unless they stand on a footstool; a rail does not hold them.</summary>
    [Theory]
    [InlineData(151, 1)]
    [InlineData(152, 0)]
    [InlineData(151, 0, "footstool")]
    [InlineData(151, 0, "footstool", "skin-mirror")]
    [InlineData(151, 1, "fixed-rail")]
    [InlineData(151, 1, "skin-mirror")]
    public void Feet_that_hang_cost_balance(double stature, double points, params string[] addOns)
    {
        var known = Cases.Able.Choose("stature", stature, "cm");

        Assert.Equal(points, Points(known, TrialCases.Plan("by-hand", null, Approach.Behind, Posture.Seated, addOns)));
        Assert.Equal(2, Points(known, TrialCases.Plan("by-hand", null, Approach.Behind, Posture.Standing, addOns)));
    }

    /// <summary>Twenty degrees forward, fifteen to a side or thirty of a turn, either way (<c>evidence.json</c>, balance).</summary>
    [Theory]
    [InlineData(20, 0, 0, 1)]
    [InlineData(19, 14, 29, 0)]
    [InlineData(0, 15, 0, 1)]
    [InlineData(0, -15, 0, 1)]
    [InlineData(0, 0, 30, 1)]
    [InlineData(0, 0, -30, 1)]
    [InlineData(0, -14, -29, 0)]
    public void A_pose_that_leans_far_enough_costs_balance_too(double lean, double bend, double twist, double points)
    {
        static double Rad(double degrees) => (degrees + (degrees > 0 ? 1e-9 : -1e-9)) * Math.PI / 180;
        var plan = TrialCases.Plan("by-hand");
        var pose = default(ReachPose) with { Lean = Rad(lean), Bend = Rad(bend), Twist = Rad(twist) };

        Assert.Equal(points, Points(Cases.Able, plan, pose));
        Assert.Equal(0, Points(Cases.Able, plan with { Posture = Posture.Reclined }, pose));
        Assert.Equal(0, Points(Cases.Able, plan with { Approach = null }, pose));
    }

    private static double Points(Answers known, Plan plan, ReachPose? pose = null) =>
        FallRisk.Points(new(Cases.Knowledge, known, plan, new() { Need = pose is { } p ? new() { Posture = plan.Posture, Approach = Approach.Behind, Allowed = true, Pose = p } : null }));
}
