using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Calculators;

/// <summary>A hand against its norm, and against what an aid asks of it.</summary>
public sealed class GripCalculation : Calculation
{
    private readonly KnowledgeBase _knowledge;
    private readonly Answers _known;
    private readonly HandFacts _facts;
    private readonly HandCapacity _capacity;
    private readonly Aid? _aid;
    private readonly HandlingAssessment? _handling;

    /// <summary>Computes.</summary>
    /// <param name="knowledge">Norms and coefficients.</param>
    /// <param name="known">Answers, with the age among them.</param>
    /// <param name="aid">The aid that is judged, or null.</param>
    /// <param name="addOns">Add-ons used with it.</param>
    /// <exception cref="ArgumentException">The age is not among the answers.</exception>
    public GripCalculation(KnowledgeBase knowledge, Answers known, Aid? aid, ImmutableArray<AddOn> addOns)
    {
        double age = known.Si(QuestionIds.Age) ?? throw new ArgumentException("the age is needed", nameof(known));
        _knowledge = knowledge;
        _known = known;
        var filled = Assumptions.Fill(knowledge.Questions, known);
        if (!known.Knows(QuestionIds.Grasp) && known.Si(QuestionIds.Pinch) > 0)
        {
            filled = filled.With(QuestionIds.Grasp, new(new AnswerValue.Choice(Words.Of(Grasp.FinePinch)), HowObtained.Measured));
        }

        _facts = AnswerMapping.Hand(filled) with { AgeYears = age };
        _capacity = knowledge.Hand.Capacity(_facts);
        _aid = aid;
        _handling = aid is null ? null : knowledge.Hand.Assess(aid, addOns.AsSpan(), _facts, _capacity, 0.5);
    }

    /// <inheritdoc/>
    public override IEnumerable<string> Lines() =>
    [
        .. NormLines("Grip", _knowledge.Hand.Norms.Grip.For(_facts.AgeYears, _facts.Sex), _facts.GripNewtons, _knowledge.Hand.Norms.Grip.Source),
        .. _facts.PinchNewtons is null ? [] : NormLines("Pinch", _knowledge.Hand.Norms.Pinch(_facts.AgeYears, _facts.Sex), _facts.PinchNewtons, _knowledge.Hand.Norms.PalmarPinch.Source),
        .. CapacityLines(),
        .. _aid is { } aid && _handling is { } handling ? AidLines(aid, handling) : [],
        AdviceText.Limits,
    ];

    /// <inheritdoc/>
    public override JsonObject Json() => new()
    {
        ["grip"] = Norm(_knowledge.Hand.Norms.Grip.For(_facts.AgeYears, _facts.Sex), _facts.GripNewtons, _knowledge.Hand.Norms.Grip.Source),
        ["pinch"] = Norm(_knowledge.Hand.Norms.Pinch(_facts.AgeYears, _facts.Sex), _facts.PinchNewtons, _knowledge.Hand.Norms.PalmarPinch.Source),
        ["capacityNewtons"] = new JsonObject(Enum.GetValues<Grasp>().Where(g => g != Grasp.None)
            .Select(g => KeyValuePair.Create(JsonNamingPolicy.CamelCase.ConvertName(g.ToString()), JsonText.Rounded(_capacity.Of(g).Median)))),
        ["measurementAndGraspDisagree"] = _capacity.MeasurementAndGraspDisagree,
        ["aid"] = _aid is { } aid && _handling is { } handling ? Aid(aid, handling) : null,
    };

    private IEnumerable<string> NormLines(string what, NormLookup norm, double? measured, string source)
    {
        yield return $"{what} norm for {People()}: half of them reach {Spoken.Force(norm.Curve.Median)}.";
        yield return $"9 of 10 lie between {Spoken.Force(norm.Curve.At(0.05))} and {Spoken.Force(norm.Curve.At(0.95))}.";
        if (norm.IsOutsideTable)
        {
            yield return "The norm table does not have this age. The nearest ages stand in, so the norm is less certain.";
        }

        if (measured > 0)
        {
            double z = norm.Curve.ZScore(measured.Value);
            yield return $"{what} measured: {Spoken.Force(measured.Value)}. {Percentile(norm.Curve.Percentile(measured.Value))} of 100 such people are weaker.";
            yield return Math.Abs(z) < 0.05
                ? "Z-score: 0. It is the norm."
                : $"Z-score: {Number(Math.Abs(z))} standard deviations {(z < 0 ? "below" : "above")} the norm.";
        }
        else if (measured is not null)
        {
            yield return $"{what} measured: none. That is below every norm.";
        }

        yield return $"Source of the norm: {source}";
    }

    private IEnumerable<string> CapacityLines()
    {
        if (!_known.Knows(QuestionIds.Grasp))
        {
            yield return _facts.BestGrasp == Grasp.FinePinch
                ? "The best grip was not given. A pinch was measured, so fine pinch is assumed."
                : "The best grip was not given. Whole hand is assumed. Give it with --grasp.";
        }

        yield return _facts.GripNewtons is null
            ? "Grip was not measured, so the strength below is the middle value for that age."
            : "The most this hand is likely to manage:";
        foreach (var grasp in Enum.GetValues<Grasp>().Where(g => g != Grasp.None))
        {
            double newtons = _capacity.Of(grasp).Median;
            yield return newtons > 0 ? $"{GraspName(grasp)}: {Spoken.Newtons(newtons)}." : $"{GraspName(grasp)}: not usable.";
        }

        if (_capacity.MeasurementAndGraspDisagree)
        {
            yield return "Force was measured in a grip that was said to be unusable. The weaker finding counts. Look at the hand again.";
        }
    }

    private IEnumerable<string> AidLines(Aid aid, HandlingAssessment handling)
    {
        yield return $"Aid: {aid.Name}.";
        if (handling.Operations.IsEmpty)
        {
            yield return "The hand has nothing to do.";
        }

        foreach (var o in handling.Operations)
        {
            string name = SlotText.Operation(Words.Of(o.Kind));
            yield return o switch
            {
                { Possible: false } => $"{name} needs {Spoken.Newtons(o.DemandNewtons)}. It is not possible: {Obstacle(o.Obstacle)}.",
                { GraspUsed: Grasp.None } => $"{name}: a strap does it, so no grip is needed.",
                _ => $"{name} needs {Spoken.Newtons(o.DemandNewtons)}, {Way(o)}, about {SlotText.OfHundred(o.ShareOfAcceptable)} percent of what is comfortable. {Verdict(o.Band)}",
            };
        }

        if (handling.Hold.MassKilograms > 0)
        {
            yield return $"In the hand it weighs {Number(handling.Hold.MassKilograms * 1000, 0)} grams, with a full reservoir if it has one. Its moment about the grip is {Number(handling.Hold.MomentNewtonMetres, 2)} newton metres.";
        }

        if (handling.ReleaseIsAccessible is { } meets)
        {
            string line = Number(_knowledge.Hand.Coefficients.AccessibleForce);
            yield return meets
                ? $"Letting go meets the guideline for one-handed controls: no more than {line} newtons, and no tight grasp, pinch or twist."
                : $"Letting go does not meet the guideline for one-handed controls, which is no more than {line} newtons, and no tight grasp, pinch or twist.";
        }

        if (aid.Operations.Any(o => o.Force.Basis is Core.Evidence.Basis.Estimate))
        {
            yield return "The forces for this kind of aid are estimates. Measure the real one with toiletaid aids measure.";
        }
    }

    private static JsonObject Norm(NormLookup norm, double? measured, string source) => new()
    {
        ["measuredNewtons"] = JsonText.Rounded(measured),
        ["normMedianNewtons"] = JsonText.Rounded(norm.Curve.Median),
        ["normP5Newtons"] = JsonText.Rounded(norm.Curve.At(0.05)),
        ["normP95Newtons"] = JsonText.Rounded(norm.Curve.At(0.95)),
        ["percentile"] = JsonText.Rounded(measured is { } m ? (m > 0 ? 100 * norm.Curve.Percentile(m) : 0) : null),
        ["zScore"] = JsonText.Rounded(measured > 0 ? norm.Curve.ZScore(measured.Value) : null),
        ["outsideTable"] = norm.IsOutsideTable,
        ["source"] = source,
    };

    private static JsonObject Aid(Aid aid, HandlingAssessment handling) => new()
    {
        ["id"] = aid.Id,
        ["possible"] = handling.Possible,
        ["operations"] = JsonText.Nodes(handling.Operations.Select(o => new JsonObject
        {
            ["operation"] = Words.Of(o.Kind),
            ["possible"] = o.Possible,
            ["obstacle"] = o.Obstacle == HandlingObstacle.None ? null : Words.Of(o.Obstacle),
            ["demandNewtons"] = JsonText.Rounded(o.DemandNewtons),
            ["grasp"] = o.GraspUsed == Grasp.None ? null : Words.Of(o.GraspUsed),
            ["capacityNewtons"] = JsonText.Rounded(o.CapacityNewtons),
            ["comfortableNewtons"] = JsonText.Rounded(o.AcceptableNewtons),
            ["shareOfComfortable"] = JsonText.Rounded(o.ShareOfAcceptable),
            ["band"] = Words.Of(o.Band),
        })),
        ["massKilograms"] = JsonText.Rounded(handling.Hold.MassKilograms),
        ["momentNewtonMetres"] = JsonText.Rounded(handling.Hold.MomentNewtonMetres),
        ["releaseMeetsReferenceLine"] = handling.ReleaseIsAccessible,
    };

    private string People()
    {
        string who = _facts.Sex switch { Sex.Female => "women", Sex.Male => "men", _ => "people, sex unstated," };
        return $"{who} of {Number(_facts.AgeYears)} years";
    }

    private static string Percentile(double share) => share < 0.01 ? "Fewer than 1" : share > 0.99 ? "More than 99" : SlotText.OfHundred(share);

    private static string GraspName(Grasp grasp) => grasp switch
    {
        Grasp.FinePinch => "Fine pinch",
        Grasp.WholeHand => "Whole hand",
        Grasp.PressWithPalmOrFist => "Pressing with palm or fist",
        _ => "Pressing with the forearm",
    };

    private static string Way(OperationHandling o) =>
        PlanText.Lower(GraspName(o.GraspUsed)) + (o.AgainstTheBody ? " against thigh or hip" : string.Empty);

    private static string Obstacle(HandlingObstacle obstacle) => obstacle switch
    {
        HandlingObstacle.NeedsTwoHands => "it takes two hands and only one is free",
        HandlingObstacle.NeedsFineHandling => "it needs finer handling than this hand can manage",
        HandlingObstacle.NoUsableGrasp => "it needs a grip this hand cannot manage",
        _ => "it takes too much of the hand's strength",
    };

    private static string Verdict(EffortBand band) => band switch
    {
        EffortBand.Ok => "No concern.",
        EffortBand.Caution => "Some effort: try it.",
        EffortBand.Poor => "Hard: look for something easier.",
        _ => "Too much.",
    };
}
