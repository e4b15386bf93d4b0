using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Plans;

/// <summary>Values plans for one person, in the middle case and in drawn ones.</summary>
internal sealed record Appraiser
{
    private readonly KnowledgeBase _knowledge;
    private readonly NumberSet _plausible;
    private readonly Dictionary<(HandFacts Facts, NumberSet Numbers), KnownHand> _hands = [];

    // Of the middle case: plans that differ only in posture, approach or companion ask the same of the hand.
    private readonly Dictionary<HandlingDemands, double> _scores = [];
    private readonly Dictionary<HandlingDemands, HandlingAssessment> _assessments = [];

    // Of the middle case: all but handling, which alone depends on the grip.
    private readonly Dictionary<Plan, double[]> _others;

    /// <summary>Makes it for one person.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="reach">Reach in every posture and approach.</param>
    /// <param name="functions">Criteria that depend neither on reach nor on the hand.</param>
    /// <param name="butForGrip">The same for a person of whom only the grip may differ; null where there is none.</param>
    internal Appraiser(KnowledgeBase knowledge, Answers known, ReachReport reach, CriterionFunctions functions, Appraiser? butForGrip = null)
    {
        _others = butForGrip?._others ?? new(SamePlan.Object);
        _knowledge = knowledge;
        _plausible = new(knowledge.Evidence, knowledge.Hand, functions);
        Known = known;
        Reach = reach;
    }

    /// <summary>What was seen when plans were tried; null for nothing.</summary>
    internal TrialEvidence? Tried { get; init; }

    /// <summary>Numbers of aids, hands and other evidence for drawn persons; null for the most plausible ones.</summary>
    internal DrawnNumbers? Numbers { get; init; }

    /// <summary>Answers as given.</summary>
    internal Answers Known { get; }

    /// <summary>Reach in every posture and approach.</summary>
    internal ReachReport Reach { get; }

    /// <summary>The middle case.</summary>
    internal DrawnPerson Middle => field ??= DrawPerson(Assumptions.Fill(_knowledge.Questions, Known), 0.5);

    /// <summary>A person as they may be.</summary>
    /// <param name="filled">Answers, none unknown.</param>
    /// <param name="strength">Share of such people whose hands are weaker, above 0 and below 1.</param>
    /// <param name="draw">Number of the reach draw, 0 or more; null for the middle of all.</param>
    internal DrawnPerson DrawPerson(Answers filled, double strength, int? draw = null)
    {
        var facts = AnswerMapping.Hand(filled);
        var numbers = (draw is { } number ? Numbers?.Of(number) : null) ?? _plausible;
        if (!_hands.TryGetValue((facts, numbers), out var hand))
        {
            _hands[(facts, numbers)] = hand = new(facts, numbers.Hand.Capacity(facts));
        }

        return new(new(numbers.Evidence, filled), hand, hand.Capacity.At(strength), draw, numbers);
    }

    /// <summary>Values of a plan on every criterion, in the order of <see cref="Criterion"/>: what is predicted, and what was seen when it was tried.</summary>
    internal double[] Values(Plan plan, DrawnPerson person)
    {
        double[] values = Predicted(plan, person);
        Tried?.Update(plan, values);
        return values;
    }

    /// <summary>Predicted values of a plan, whatever was seen.</summary>
    internal double[] Predicted(Plan plan, DrawnPerson person)
    {
        plan = person.Numbers.Of(plan);
        double handling = plan.Methods.Min(m => Handling(m, plan, person));
        if (handling == 0)
        {
            // A step that this hand cannot do at all makes the rest worth nothing to this person.
            return new double[Criteria.Count];
        }

        double[]? values = null;
        bool middle = ReferenceEquals(person, Middle);
        if (middle && _others.TryGetValue(plan, out double[]? kept))
        {
            values = [.. kept];
        }

        if (values is null)
        {
            values = Others(plan, person);
            if (middle)
            {
                _others[plan] = [.. values];
            }
        }

        values[(int)Criterion.Handling] = handling;
        _knowledge.Clinic?.Apply(plan.Aid.KindId, values);
        return values;
    }

    /// <summary>Values on all criteria but handling, which is 0 here.</summary>
    private double[] Others(Plan plan, DrawnPerson person)
    {
        double[] values = new double[Criteria.Count];
        values[(int)Criterion.Reach] = plan.Methods.Min(m => ReachShare(m, plan, person.Draw));
        foreach (var criterion in Criteria.OfThePlan)
        {
            values[(int)criterion] = person.Numbers.Functions.Of(criterion, plan, person.View);
        }

        return values;
    }

    /// <summary>Probability that the cleaning method gets to the skin; in a drawn case 0 or 1. What only pats dry may fall short: the skin is clean, and wet.
    /// Where a trial says more of reach than was predicted, it counts.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="values">Its values.</param>
    /// <param name="person">The person.</param>
    internal double Arrives(Plan plan, double[] values, DrawnPerson person) => Math.Max(values[(int)Criterion.Reach], ReachShare(person.Numbers.Of(plan).Aid, plan, person.Draw));

    /// <summary>What a plan asks for in the middle case.</summary>
    internal PlanDemands Demands(Plan plan) => Demands(plan, ReachDemands(plan));

    /// <summary>The same where <see cref="ReachDemands"/> were asked before.</summary>
    internal PlanDemands Demands(Plan plan, PlanDemands reach) => reach with
    {
        Handling = Assessment(plan.Aid, plan),
        CompanionHandling = plan.Companion is { } c ? Assessment(c, plan) : null,
    };

    /// <summary>The same without what it asks of the hand.</summary>
    internal PlanDemands ReachDemands(Plan plan)
    {
        var reaching = plan.Methods.Where(m => m.Reach != ReachKind.None).ToList();
        var need = reaching.Count > 0 && plan.Approach is { } approach ? Reach.Need(plan.Posture, approach) : null;
        var shortest = reaching.MinBy(m => ReachShare(m, plan, null));
        return new()
        {
            Need = need,
            GivenLength = shortest is null ? double.PositiveInfinity : Length(shortest),
            ByBareHand = shortest?.Reach == ReachKind.BareHand,
            SeenShort = shortest?.Reach == ReachKind.BareHand && plan.Approach is { } seen && SeenShort(seen) is not null,
            ReachShare = plan.Methods.Min(m => ReachShare(m, plan, null)),
            OutsideSurvey = Reach.OutsideSurvey,
        };
    }

    /// <summary>Probability that a method is long enough; in a drawn case 0 or 1.</summary>
    internal double ReachShare(Aid aid, Plan plan, int? draw)
    {
        if (aid.Reach == ReachKind.None || plan.Approach is not { } approach)
        {
            return 1;
        }

        var need = Reach.Need(plan.Posture, approach);
        if (!need.Allowed)
        {
            return 0;
        }

        if (draw is not { } number || need.Draws.IsEmpty)
        {
            return aid.Reach == ReachKind.BareHand
                ? Math.Min(Math.Max(need.ProbabilityBareHand(), SeenAtTheSkin(approach)), SeenShort(approach) ?? 1)
                : need.ProbabilityLongEnough(Length(aid), aid.Shape);
        }

        int i = number % need.Draws.Length;
        if (aid.Reach == ReachKind.BareHand)
        {
            // The same part of the persons in every draw, so that plans are compared on the same persons.
            bool reaches = need.Draws[i] - need.Stroke <= need.HandReach[i] || (i + 0.5) / need.Draws.Length < SeenAtTheSkin(approach);
            return reaches && (SeenShort(approach) is not { } most || (i + 0.5) / need.Draws.Length < most) ? 1 : 0;
        }

        return need.Draws[i] <= Length(aid) - (aid.Shape == AidShape.Straight ? need.StraightExtra : 0) ? 1 : 0;
    }

    /// <summary>Share of persons whose hand alone is enough because it was seen at the skin or past it; 0 where it was not. What was seen counts before what is computed.</summary>
    private double SeenAtTheSkin(Approach approach)
    {
        EvidenceId? seen = approach switch
        {
            Approach.Behind when Known.Choice(QuestionIds.ReachBehind) is (LandmarkBehind.TheCleft or LandmarkBehind.Tailbone or LandmarkBehind.WaistOrAbove) and var behind => EvidenceIds.ReachHandBehind[behind],
            Approach.Front when Known.Choice(QuestionIds.ReachFront) is LandmarkFront.PastTheGroin and var front => EvidenceIds.ReachHandFront[front],
            _ => null,
        };
        return seen is { } id ? _knowledge.Evidence.Value(id) : 0;
    }

    /// <summary>Share of persons whose hand alone may be enough though it was seen to stop short of the skin; null where it was not seen to. Pain, spasticity
    /// and weakness stop a hand that the joints would let pass, so that what was seen caps what is computed.</summary>
    private double? SeenShort(Approach approach)
    {
        EvidenceId? seen = (approach, Known.Choice(QuestionIds.ReachBehind), Known.Choice(QuestionIds.ReachFront)) switch
        {
            (Approach.Behind, (LandmarkBehind.NotPastTheHip or LandmarkBehind.OuterButtock) and { } behind, _) => EvidenceIds.ReachHandBehind[behind],
            (Approach.Side, LandmarkBehind.NotPastTheHip and { } behind, _) => EvidenceIds.ReachHandBehind[behind],
            (Approach.Front, _, (LandmarkFront.NotPastMidThigh or LandmarkFront.Groin) and { } front) => EvidenceIds.ReachHandFront[front],
            _ => null,
        };
        return seen is { } id ? _knowledge.Evidence.Value(id) : null;
    }

    private double Length(Aid aid) => aid.Reach == ReachKind.BareHand ? Reach.HandReach : (aid.Length?.Value ?? 0) + (aid.JetReach?.Value ?? 0);

    private double Handling(Aid aid, Plan plan, DrawnPerson person)
    {
        if (aid.Method == MethodKind.Helper)
        {
            return person.Numbers.Hand.Coefficients.Helped;
        }

        var demands = DemandsOf(aid, plan, person);
        if (!ReferenceEquals(person, Middle))
        {
            return demands.Score(person.Strength).Value;
        }

        if (!_scores.TryGetValue(demands, out double score))
        {
            _scores[demands] = score = demands.Score(person.Strength).Value;
        }

        return score;
    }

    private HandlingAssessment? Assessment(Aid aid, Plan plan)
    {
        if (aid.Method == MethodKind.Helper)
        {
            return null;
        }

        var demands = DemandsOf(aid, plan, Middle);
        if (!_assessments.TryGetValue(demands, out var assessment))
        {
            _assessments[demands] = assessment = demands.Assess(Middle.Strength);
        }

        return assessment;
    }

    private static HandlingDemands DemandsOf(Aid aid, Plan plan, DrawnPerson person) => person.Hand.Demands(aid, plan.AddOns, person.Numbers.Hand.Coefficients);
}
