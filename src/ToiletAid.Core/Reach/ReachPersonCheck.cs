using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Checks that a person can be computed.</summary>
public static class ReachPersonCheck
{
    /// <summary>Every input that cannot be used; empty when all can.</summary>
    /// <param name="tables">Gives the ranges.</param>
    /// <param name="person">What is known.</param>
    public static ImmutableArray<ReachIssue> Check(BodyTables tables, ReachPerson person)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(person);
        InputRanges n = tables.Model.Input;
        var issues = ImmutableArray.CreateBuilder<ReachIssue>();
        if (person.Stature is { } stature)
        {
            Within(issues, "stature", "The stature", stature.Value, n.StatureLeast, n.StatureGreatest, 100, "cm");
        }

        if (person.Mass is { } mass)
        {
            Within(issues, "mass", "The body mass", mass.Value, n.MassLeast, n.MassGreatest, 1, "kg");
        }

        if (person.AgeYears is { } age)
        {
            Within(issues, "age", "The age", age, n.AgeLeast, n.AgeGreatest, 1, "years");
        }

        const double Degrees = 180 / Math.PI;
        if (person.LeanForward is { } forward)
        {
            Within(issues, "lean", "The lean forward", forward.Value, 0, n.LeanGreatest, Degrees, "degrees");
        }

        if (person.LeanSideways is { } sideways)
        {
            Within(issues, "lean", "The lean to a side", sideways.Value, 0, n.LeanGreatest, Degrees, "degrees");
        }

        foreach ((JointMotion motion, ReachInput given) in person.Joints.OrderBy(j => j.Key))
        {
            Within(issues, "joints", $"The range of {Spoken(motion)}", given.Value, 0, n.JointGreatest, Degrees, "degrees");
        }

        foreach ((BodyMeasure measure, ReachInput given) in person.Lengths.OrderBy(l => l.Key))
        {
            Within(issues, "lengths", $"The measured {Spoken(measure)}", given.Value, n.LengthLeast, n.LengthGreatest, 100, "cm");
        }

        return issues.ToImmutable();
    }

    /// <summary>An enum member's name as lower-case words.</summary>
    private static string Spoken<T>(T value)
        where T : struct, Enum =>
        Words.Of(value).Replace('-', ' ');

    private static void Within(
        ImmutableArray<ReachIssue>.Builder issues,
        string field,
        string subject,
        double value,
        double low,
        double high,
        double factor,
        string unit)
    {
        if (value >= low && value <= high)
        {
            return;
        }

        string given = double.IsFinite(value) ? string.Create(CultureInfo.InvariantCulture, $"{value * factor:0.##} {unit}") : "not a number";
        string sentence = string.Create(
            CultureInfo.InvariantCulture,
            $"{subject} must be between {low * factor:0.##} and {high * factor:0.##} {unit}, but it is {given}.");
        issues.Add(new ReachIssue(field, sentence));
    }
}
