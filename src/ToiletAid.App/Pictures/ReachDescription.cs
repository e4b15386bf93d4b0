using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Pictures;

/// <summary>The picture in words, for those who hear it: no symbols, one idea a sentence.</summary>
public static class ReachDescription
{
    private const double Degree = Math.PI / 180;

    /// <summary>One line that names the need.</summary>
    public static string Title(ReachNeed need)
    {
        ArgumentNullException.ThrowIfNull(need);
        return $"Reach {From(need.Approach)}, {In(need.Posture)}";
    }

    /// <summary>Says what the picture shows.</summary>
    /// <param name="report">The report.</param>
    /// <param name="need">One of its needs.</param>
    /// <param name="hand">The hand used.</param>
    /// <returns>Sentences in plain words; lengths in whole centimetres, angles in whole degrees.</returns>
    public static ImmutableArray<string> Sentences(ReachReport report, ReachNeed need, WorkingHand hand)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(need);
        var said = ImmutableArray.CreateBuilder<string>();
        said.Add($"The hand reaches {From(need.Approach)}, {In(need.Posture)}.");
        if (!need.Allowed)
        {
            said.Add("This posture is not used for this person.");
            return said.ToImmutable();
        }

        if (!double.IsFinite(need.MiddleLength))
        {
            said.Add("There is no way to the skin in this posture with these joints.");
            return said.ToImmutable();
        }

        string working = hand switch
        {
            WorkingHand.Left => "left",
            WorkingHand.Right => "right",
            _ => "working",
        };
        Pose(said, need.Pose, working);
        said.Add($"In this pose an aid needs {Centimetres(need.MiddleLength)} from the middle of the grip to the skin.");
        if (need.Draws.Length > 0 && double.IsFinite(need.LowLength))
        {
            said.Add(double.IsFinite(need.HighLength)
                ? $"With what is known, eight in ten such people need between {Number(100 * need.LowLength)} and {Centimetres(need.HighLength)}."
                : "With what is known, it may also be that there is no way.");
        }

        said.Add($"The bare hand reaches {Centimetres(report.HandReach)} past its grip.");
        said.Add(need.MissingForBareHand <= 0
            ? "That is enough without an aid."
            : $"The bare hand lacks {(need.MissingForBareHand < 0.005 ? "less than a centimetre" : Centimetres(need.MissingForBareHand))}.");
        if (need.StraightExtra >= 0.005)
        {
            said.Add(double.IsFinite(need.StraightExtra)
                ? $"A straight aid must be {Centimetres(need.StraightExtra)} longer than a curved one."
                : "A straight aid does not get there.");
        }

        foreach (LimitingJoint joint in need.Limiting.Take(1).Where(j => j.ChangeForTenDegrees <= -0.005))
        {
            said.Add($"Most is lost by the {Words.Of(joint.Motion).Replace('-', ' ')}.");
            said.Add($"Ten degrees more of it would save {Centimetres(-joint.ChangeForTenDegrees)}.");
        }

        return said.ToImmutable();
    }

    private static void Pose(ImmutableArray<string>.Builder said, ReachPose pose, string working)
    {
        Angle(said, pose.Lean, "The trunk leans forward {0} degrees.", null);
        Angle(said, pose.Bend, $"The trunk bends {{0}} degrees toward the {working} hand.", $"The trunk bends {{0}} degrees away from the {working} hand.");
        Angle(said, pose.Twist, $"The {working} shoulder turns backward {{0}} degrees.", $"The {working} shoulder turns forward {{0}} degrees.");
        Angle(said, pose.ShoulderFlexion, "The upper arm is raised forward {0} degrees.", "The upper arm goes backward {0} degrees.");
        Angle(said, pose.ShoulderAbduction, "The upper arm is out to the side {0} degrees.", "The upper arm crosses in {0} degrees.");
        Angle(said, pose.ShoulderInternalRotation, "The arm is turned inward {0} degrees.", "The arm is turned outward {0} degrees.");
        Angle(said, pose.ElbowFlexion, "The elbow is bent {0} degrees.", null);
    }

    private static void Angle(ImmutableArray<string>.Builder said, double radians, string positive, string? negative)
    {
        double degrees = Math.Round(radians / Degree);
        string? sentence = degrees > 0 ? positive : (degrees < 0 ? negative : null);
        if (sentence is not null)
        {
            string text = string.Format(CultureInfo.InvariantCulture, sentence, Number(Math.Abs(degrees)));
            said.Add(Math.Abs(degrees) == 1 ? text.Replace(" degrees", " degree", StringComparison.Ordinal) : text);
        }
    }

    private static string Centimetres(double metres)
    {
        string number = Number(100 * metres);
        return number == "1" ? "1 centimetre" : $"{number} centimetres";
    }

    private static string Number(double value) => value.ToString("0", CultureInfo.InvariantCulture);

    private static string From(Approach approach) => approach switch
    {
        Approach.Behind => "from behind",
        Approach.Front => "from the front",
        _ => "from the side",
    };

    private static string In(Posture posture) => posture switch
    {
        Posture.Seated => "seated",
        Posture.SeatedLeaningForward => "seated and leaning forward",
        Posture.HalfStanding => "half standing",
        Posture.Standing => "standing",
        Posture.SideLying => "lying on one side",
        _ => "reclined",
    };
}
