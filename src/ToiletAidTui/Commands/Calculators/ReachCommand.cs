using System.Collections.Immutable;
using ToiletAid.App.Calculators;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>The calculator of reach.</summary>
internal static class ReachCommand
{
    private const int UsualDraws = 500;
    private const int MostDraws = 4096;

    private static readonly ImmutableArray<string> Joints =
    [
        "shoulder-flexion", "shoulder-extension", "shoulder-abduction", "internal-rotation", "external-rotation", "elbow-flexion",
        "trunk-flexion", "side-bend", "trunk-rotation", "forearm-pronation", "forearm-supination", "wrist-flexion", "wrist-extension",
    ];

    internal static Calculator Calculator { get; } = new(
        "reach",
        "How long an aid must be from each approach, in which posture, and which joint limits it.",
        [
            ("stature", "Stature, such as \"172 cm\" or \"5 ft 7 in\"."),
            ("mass", "Body mass, such as \"70 kg\" or \"11 st 4\"."),
            ("sex", "female, male or unstated."),
            ("age", "Age in years."),
            ("hand", "Hand used: right, left, either."),
            ("posture", "seated, seated-leaning-forward, half-standing, standing, side-lying, reclined. Seated if left out."),
            ("lean", "How far the person can lean: forward, to-a-side, both, not-at-all, or degrees forward."),
            ("reach-behind", "Highest point behind: not-past-the-hip, outer-buttock, the-cleft, tailbone, waist-or-above."),
            ("reach-front", "How far between the thighs: not-past-mid-thigh, groin, past-the-groin."),
            ("precautions", "Precautions in force, with commas between them, or none."),
            .. Joints.Select(j => (j, $"Range of {j.Replace('-', ' ')}, degrees.")),
            ("approach", "behind, front or side. All if left out."),
            ("picture", "File such as reach.svg to draw the shortest way in."),
            ("draws", "Simulated people for the band, 0 to 4096. 500 if left out."),
        ],
        Compute);

    private static ReachCalculation? Compute(CalculatorInput input)
    {
        input.Answers(QuestionIds.Stature, QuestionIds.Mass, QuestionIds.Sex, QuestionIds.Age, QuestionIds.Hand, QuestionIds.Posture, QuestionIds.Lean, QuestionIds.ReachBehind, QuestionIds.ReachFront, QuestionIds.Precautions);
        foreach (string joint in Joints)
        {
            input.Typed.Joint(joint, input.Text(joint));
        }

        var approach = Words.Find<Approach>(input.Text("approach"));
        if (input.Has("approach") && approach is null)
        {
            input.Typed.Fault("approach", $"{input.Text("approach")} is not an approach, use behind, front or side.");
        }

        int? draws = input.Count("draws", (0, MostDraws));
        if (input.Typed.Faults.Count == 0)
        {
            foreach (var issue in ReachPersonCheck.Check(input.Knowledge.Body, AnswerMapping.Reach(input.Typed.Answers)))
            {
                input.Typed.Fault(issue.Field, issue.Sentence);
            }
        }

        if (input.Typed.Faults.Count > 0)
        {
            return null;
        }

        var calculation = new ReachCalculation(input.Knowledge, input.Typed.Answers, draws ?? UsualDraws, approach is { } only ? [only] : []);
        if (input.Text("picture") is { } file)
        {
            Draw(input, calculation, file);
        }

        return calculation;
    }

    private static void Draw(CalculatorInput input, ReachCalculation calculation, string file)
    {
        if (calculation.Drawn is null)
        {
            input.Typed.Fault("picture", "There is no way to the skin in this posture, so there is nothing to draw. Try another posture.");
            return;
        }

        if (input.Write(file, calculation.Picture()) is { } fault)
        {
            input.Typed.Fault("picture", fault);
            return;
        }

        calculation.PictureFile = file;
    }
}
