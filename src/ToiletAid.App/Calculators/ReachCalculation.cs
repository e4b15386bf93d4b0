using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Pictures;
using ToiletAid.App.Wording;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Calculators;

/// <summary>How long an aid must be for one person in one posture, from every approach.</summary>
public sealed class ReachCalculation : Calculation
{
    /// <summary>Joints that are read out for one approach; further ones shorten less.</summary>
    private const int MostJoints = 2;

    private const double AngleWorthSaying = 5 * Math.PI / 180;
    private const double LengthWorthSaying = 0.005;

    private static readonly ImmutableArray<QuestionId> BodyQuestions = [QuestionIds.Stature, QuestionIds.Mass];

    private readonly Answers _known;
    private readonly ReachPerson _person;
    private readonly Posture _posture;
    private readonly ReachReport _report;
    private readonly int _draws;

    /// <summary>Computes.</summary>
    /// <param name="knowledge">Body and joints.</param>
    /// <param name="known">Answers; whatever is missing is drawn from its whole range.</param>
    /// <param name="draws">Simulated people, 0 to 4096.</param>
    /// <param name="approaches">Approaches; empty for all.</param>
    /// <exception cref="ArgumentException">An answer is outside what the body model takes.</exception>
    public ReachCalculation(KnowledgeBase knowledge, Answers known, int draws, ImmutableArray<Approach> approaches)
    {
        _known = known;
        _draws = draws;
        _person = AnswerMapping.Reach(known);
        _posture = known.Choice(QuestionIds.Posture) ?? Posture.Seated;
        _report = ReachAnalysis.Analyse(knowledge.Body, _person, new() { Draws = draws, Postures = [_posture], Approaches = approaches });
    }

    /// <summary>The need that is drawn: the shortest that can be used; null where there is no way.</summary>
    public ReachNeed? Drawn => _report.Needs.Where(n => n is { Allowed: true, Sketch: not null } && double.IsFinite(n.MiddleLength)).MinBy(n => n.MiddleLength);

    /// <summary>Name of the file that the picture was written to, or null.</summary>
    public string? PictureFile { get; set; }

    /// <summary>The picture of <see cref="Drawn"/> as SVG.</summary>
    /// <exception cref="InvalidOperationException">There is nothing to draw.</exception>
    public string Picture() => ReachPicture.Svg(_report, Drawn ?? throw new InvalidOperationException("nothing can be drawn"), _person.Hand);

    /// <inheritdoc/>
    public override IEnumerable<string> Lines() =>
    [
        .. HeadLines(),
        .. _report.Needs.SelectMany(NeedLines),
        .. _report.Contradictions.Select(Contradiction),
        .. _report.OutsideSurvey ? ["This height and weight are outside the body survey behind these lengths, so they are less certain and the ranges are wider."] : (string[])[],
        .. PictureFile is { } file ? [$"The picture in {file} shows {PlanText.Way(Drawn!.Approach)}. It holds its own description in words."] : (string[])[],
        "Lengths run from the middle of the grip to the middle of the wiping face, along the aid, including the wiping stroke.",
        AdviceText.Limits,
    ];

    /// <inheritdoc/>
    public override JsonObject Json() => new()
    {
        ["posture"] = Words.Of(_posture),
        ["draws"] = _draws,
        ["seed"] = _report.Seed,
        ["handReachMetres"] = JsonText.Rounded(_report.HandReach),
        ["outsideSurvey"] = _report.OutsideSurvey,
        ["picture"] = PictureFile,
        ["approaches"] = JsonText.Nodes(_report.Needs.Select(Need)),
        ["contradictions"] = JsonText.Nodes(_report.Contradictions.Select(c => new JsonObject
        {
            ["question"] = c.Question.Text,
            ["against"] = c.Against,
            ["answerIsTooGood"] = c.AnswerIsTooGood,
            ["metres"] = JsonText.Rounded(c.Metres),
            ["degrees"] = JsonText.Rounded(InDegrees(c.Radians)),
        })),
    };

    private static JsonObject Need(ReachNeed need) => new()
    {
        ["approach"] = Words.Of(need.Approach),
        ["allowed"] = need.Allowed,
        ["forbiddenBecause"] = need.ForbiddenBecause,
        ["middleMetres"] = JsonText.Rounded(need.MiddleLength),
        ["medianMetres"] = JsonText.Rounded(need.MedianLength),
        ["lowMetres"] = JsonText.Rounded(need.LowLength),
        ["highMetres"] = JsonText.Rounded(need.HighLength),
        ["sharePossible"] = JsonText.Rounded(need.SharePossible),
        ["shareBareHandEnough"] = JsonText.Rounded(need.Allowed ? need.ProbabilityBareHand() : 0),
        ["straightExtraMetres"] = JsonText.Rounded(need.Allowed ? need.StraightExtra : null),
        ["poseDegrees"] = !need.Allowed || !double.IsFinite(need.MiddleLength) ? null
            : new JsonObject(Angles(need.Pose).Select(a => KeyValuePair.Create(a.Name, JsonText.Rounded(InDegrees(a.Radians))))),
        ["limitingJoints"] = JsonText.Nodes(need.Limiting.Select(j => new JsonObject { ["motion"] = Words.Of(j.Motion), ["changeForTenDegreesMetres"] = JsonText.Rounded(j.ChangeForTenDegrees) })),
    };

    private static double InDegrees(double radians) => radians * 180 / Math.PI;

    private IEnumerable<string> HeadLines()
    {
        yield return $"Posture: {PlanText.Of(_posture)}.{(_known.Knows(QuestionIds.Posture) ? string.Empty : " It was not given, so this is assumed.")}";
        var missing = BodyQuestions.Where(q => !_known.Knows(q)).Select(q => q.Text).ToList();
        if (missing.Count > 0)
        {
            yield return $"{missing.Humanize("and").Humanize()} not given, so every usual body size is allowed for and the ranges are wide.";
        }

        yield return $"The hand alone reaches {SlotText.Centimetres(_report.HandReach)} past the middle of its grip.";
    }

    private IEnumerable<string> NeedLines(ReachNeed need)
    {
        string way = PlanText.Way(need.Approach).Humanize();
        if (!need.Allowed)
        {
            yield return $"{way}: not to be used, {Because(need.ForbiddenBecause)}.";
            yield break;
        }

        if (!double.IsFinite(need.MedianLength))
        {
            yield return need.SharePossible > 0
                ? $"{way}: there is a way in only {SlotText.OfHundred(need.SharePossible)} of 100 cases. Choose another way."
                : $"{way}: there is no way to the skin.";
            yield break;
        }

        string band = _draws == 0 ? string.Empty
            : double.IsFinite(need.HighLength) ? $" In 80 of 100 cases it is between {SlotText.Centimetres(need.LowLength)} and {SlotText.Centimetres(need.HighLength)}."
            : $" In 90 of 100 cases it is {SlotText.Centimetres(need.LowLength)} or more, and in {SlotText.OfHundred(1 - need.SharePossible)} there is no way.";
        yield return $"{way}: about {SlotText.Centimetres(need.MedianLength)} are needed.{band}";
        yield return $"The bare hand gets there in {SlotText.OfHundred(need.ProbabilityBareHand())} of 100 cases.";
        if (double.IsFinite(need.MiddleLength))
        {
            yield return $"Posture for it: {Trunk(need.Pose)}.";
        }

        foreach (var joint in need.Limiting.Where(j => j.ChangeForTenDegrees < -LengthWorthSaying).Take(MostJoints))
        {
            yield return $"10 degrees more {MotionWords(joint.Motion)} would shorten it by {SlotText.Centimetres(-joint.ChangeForTenDegrees)}.";
        }

        if (need.StraightExtra >= LengthWorthSaying)
        {
            yield return double.IsFinite(need.StraightExtra)
                ? $"A straight aid must be {SlotText.Centimetres(need.StraightExtra)} longer."
                : "A straight aid does not get there.";
        }
    }

    /// <summary>What the solved posture asks of the trunk.</summary>
    private static string Trunk(ReachPose pose)
    {
        var says = new List<string>();
        if (pose.Lean > AngleWorthSaying)
        {
            says.Add($"lean forward about {Degrees(pose.Lean)}");
        }
        else if (pose.Lean < -AngleWorthSaying)
        {
            says.Add($"lean back about {Degrees(-pose.Lean)}");
        }

        if (Math.Abs(pose.Bend) > AngleWorthSaying)
        {
            says.Add($"bend to the {(pose.Bend > 0 ? "side of the cleaning hand" : "other side")} about {Degrees(Math.Abs(pose.Bend))}");
        }

        if (Math.Abs(pose.Twist) > AngleWorthSaying)
        {
            says.Add($"turn the shoulder of the cleaning hand {(pose.Twist > 0 ? "back" : "forward")} about {Degrees(Math.Abs(pose.Twist))}");
        }

        return says.Count == 0 ? "upright trunk" : says.Humanize("and");
    }

    private static ImmutableArray<(string Name, double Radians)> Angles(ReachPose pose) =>
    [
        ("lean", pose.Lean),
        ("bend", pose.Bend),
        ("twist", pose.Twist),
        ("shoulderFlexion", pose.ShoulderFlexion),
        ("shoulderAbduction", pose.ShoulderAbduction),
        ("shoulderInternalRotation", pose.ShoulderInternalRotation),
        ("elbowFlexion", pose.ElbowFlexion),
    ];

    private static string Degrees(double radians) => "degree".ToQuantity((int)(Math.Round(radians * 36 / Math.PI) * 5));

    private static string MotionWords(JointMotion motion) => motion switch
    {
        JointMotion.ElbowExtensionLag => "elbow extension",
        JointMotion.TrunkFlexion => "lean forward",
        _ => Words.Of(motion).Replace('-', ' '),
    };

    private static string Because(string? reason) => reason switch
    {
        "lies-on-it" => "the person lies on it",
        "cannot-lean-forward" => "the person cannot lean forward that far",
        "cannot-lean-sideways" => "the person cannot lean to the side that far",
        "hip-flexion-limit" => "the hip would flex past its limit",
        "no-twisting-or-bending" => "the spine must not twist or bend",
        "sternal" => "a healing breastbone must not be strained by reaching behind the back",
        "shoulder-surgery" => "an operated shoulder must not go behind the back",
        "no-weight-through-hand" => "no weight may go through the hand",
        _ => "the person cannot hold that posture",
    };

    /// <summary>Two answers that do not fit, with by how much.</summary>
    private static string Contradiction(ReachContradiction c)
    {
        string by = c.Metres > 0 ? $" by {SlotText.Centimetres(c.Metres)}" : $" by {Degrees(c.Radians)}";
        return $"The answer to {c.Question} and the measured {c.Against.Replace('-', ' ')} do not match. The answer is {(c.AnswerIsTooGood ? "better" : "worse")} than they allow{by} beyond the errors. Ask or measure again.";
    }
}
