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
    private static readonly int Postures = Enum.GetValues<Posture>().Length;
    private static readonly int Approaches = Enum.GetValues<Approach>().Length;

    private readonly KnowledgeBase _knowledge;
    private readonly NumberSet _plausible;
    private readonly Dictionary<NumberSet, List<KnownHand>> _hands = [];

    // Of the middle case: plans that differ only in posture or approach ask the same of the hand.
    private readonly Dictionary<Tools, double> _handling = [];
    private readonly Dictionary<HandlingDemands, HandlingAssessment> _assessments = [];

    // What does not depend on the grip is taken from here; null where there is nothing.
    private readonly Appraiser? _butForGrip;
    private readonly Dictionary<Aid, double[]> _shares;
    private readonly double?[] _seenAtTheSkin = new double?[Approaches];
    private readonly (bool IsKnown, double? Most)[] _seenShort = new (bool, double?)[Approaches];
    private (Answers Filled, HandFacts Facts)? _lastFacts;
    private DrawnPeople? _people;

    /// <summary>Makes it for one person.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="reach">Reach in every posture and approach.</param>
    /// <param name="functions">Criteria that depend neither on reach nor on the hand.</param>
    /// <param name="butForGrip">The same for a person of whom only the grip may differ; null where there is none.</param>
    internal Appraiser(KnowledgeBase knowledge, Answers known, ReachReport reach, CriterionFunctions functions, Appraiser? butForGrip = null)
    {
        _butForGrip = butForGrip;
        _shares = butForGrip?._shares ?? new(SameObject<Aid>.Comparer);
        _knowledge = knowledge;
        _plausible = new(knowledge.Evidence, knowledge.Hand, functions);
        Known = known;
        Reach = reach;
    }

    /// <summary>What was seen when plans were tried; null for nothing.</summary>
    internal TrialEvidence? Tried { get; init; }

    /// <summary>Numbers of aids, hands and other evidence for drawn persons; null for the most plausible ones.</summary>
    internal Lazy<DrawnNumbers?>? Numbers { get; init; }

    /// <summary>Answers as given.</summary>
    internal Answers Known { get; }

    /// <summary>Reach in every posture and approach.</summary>
    internal ReachReport Reach { get; }

    /// <summary>The middle case.</summary>
    internal DrawnPerson Middle => field ??= MiddlePerson();

    private DrawnPerson MiddlePerson()
    {
        var filled = Assumptions.Fill(_knowledge.Questions, Known);
        return Person(_butForGrip?.Middle.Case ?? new(filled, _plausible, null), AnswerMapping.Hand(filled), 0.5);
    }

    /// <summary>A person as they may be.</summary>
    /// <param name="filled">Answers, none unknown.</param>
    /// <param name="strength">Share of such people whose hands are weaker, above 0 and below 1.</param>
    /// <param name="draw">Number of the reach draw, 0 or more.</param>
    internal DrawnPerson DrawPerson(Answers filled, double strength, int draw) => Person(new(filled, NumbersOf(draw), draw), AnswerMapping.Hand(filled), strength);

    /// <summary>The persons of the ranking.</summary>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="likely">People who would give these answers; null to draw what is not known by itself.</param>
    internal DrawnPeople People(ulong seed, Answers[]? likely)
    {
        if (_people is null || _people.Seed != seed || !ReferenceEquals(_people.Likely, likely))
        {
            _people = likely is null && _butForGrip?._people is { Likely: null } same && same.Seed == seed ? same : new(_knowledge, Known, NumbersOf, seed, likely);
        }

        return _people;
    }

    /// <summary>Answers of one of them, with the grip where that is known.</summary>
    internal Answers Filled(DrawnCase drawn) => Known.Knows(QuestionIds.Grip) ? drawn.Filled.With(QuestionIds.Grip, Known[QuestionIds.Grip]!) : drawn.Filled;

    /// <summary>One of them, with the hand that these answers give them.</summary>
    /// <param name="drawn">The person but for the strength of the hand.</param>
    /// <param name="strength">Share of such people whose hands are weaker, above 0 and below 1.</param>
    internal DrawnPerson DrawPerson(DrawnCase drawn, double strength)
    {
        // Where little is open, many share their answers.
        if (_lastFacts is not { } last || !ReferenceEquals(last.Filled, drawn.Filled))
        {
            var facts = drawn.Facts;
            _lastFacts = last = (drawn.Filled, Known.Si(QuestionIds.Grip) is { } grip ? facts with { GripNewtons = grip } : facts);
        }

        return Person(drawn, last.Facts, strength);
    }

    private NumberSet NumbersOf(int draw) => Numbers?.Value?.Of(draw) ?? _plausible;

    private DrawnPerson Person(DrawnCase drawn, HandFacts facts, double strength)
    {
        if (!_hands.TryGetValue(drawn.Numbers, out var hands))
        {
            _hands[drawn.Numbers] = hands = [];
        }

        foreach (var known in hands)
        {
            if (known.Facts == facts)
            {
                return new(drawn, known, known.Capacity.At(strength));
            }
        }

        var before = _butForGrip?._hands.GetValueOrDefault(drawn.Numbers)?.Find(h => h.Facts with { GripNewtons = facts.GripNewtons } == facts);
        var hand = new KnownHand(facts, drawn.Numbers.Hand.Capacity(facts), before);
        hands.Add(hand);
        return new(drawn, hand, hand.Capacity.At(strength));
    }

    /// <summary>Values of a plan on every criterion, in the order of <see cref="Criterion"/>: what is predicted, and what was seen when it was tried.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="person">The person.</param>
    /// <param name="values">Receives them.</param>
    internal void Values(Plan plan, DrawnPerson person, Span<double> values)
    {
        Predicted(plan, person, values);
        Tried?.Update(plan, values);
    }

    /// <inheritdoc cref="Values(Plan, DrawnPerson, Span{double})"/>
    internal double[] Values(Plan plan, DrawnPerson person)
    {
        double[] values = new double[Criteria.Count];
        Values(plan, person, values);
        return values;
    }

    /// <summary>Predicted values of a plan, whatever was seen.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="person">The person.</param>
    /// <param name="values">Receives them.</param>
    internal void Predicted(Plan plan, DrawnPerson person, Span<double> values)
    {
        var usual = plan;
        plan = person.Numbers.Of(usual);
        double handling = Handling(plan, person);
        if (handling == 0)
        {
            // A step that this hand cannot do at all makes the rest worth nothing to this person.
            values.Clear();
            return;
        }

        Others(usual, plan, person).CopyTo(values);
        values[(int)Criterion.Handling] = handling;
        if (person.Draw is null)
        {
            values[(int)Criterion.Reach] = ReachShare(plan, null);
        }

        _knowledge.Clinic?.Apply(plan.Aid.KindId, values);
    }

    /// <summary>Values on all criteria but handling, and in the middle case but reach, in which there are many plans with the same tools.</summary>
    private double[] Others(Plan usual, Plan plan, DrawnPerson person)
    {
        if (person.Draw is { } draw)
        {
            return person.Case.Among is { } people ? people.Others(usual, draw) ??= OthersOfDraw(plan, person, draw) : OthersOfDraw(plan, person, draw);
        }

        var tools = Tools.Of(plan);
        if (!person.Case.OthersOfTools.TryGetValue(tools, out double[]? kept))
        {
            person.Case.OthersOfTools[tools] = kept = OthersOfTools(plan, person);
        }

        return kept;
    }

    private double[] OthersOfDraw(Plan plan, DrawnPerson person, int draw)
    {
        double[] values = OthersOfTools(plan, person);
        values[(int)Criterion.Reach] = ReachShare(plan, draw);
        return values;
    }

    /// <summary>Values on all criteria but handling and reach, which are 0 here.</summary>
    private static double[] OthersOfTools(Plan plan, DrawnPerson person)
    {
        double[] values = new double[Criteria.Count];
        foreach (var criterion in Criteria.OfThePlan)
        {
            values[(int)criterion] = person.Numbers.Functions.Of(criterion, plan, person.View);
        }

        return values;
    }

    /// <summary>Probability that every method of a plan is long enough.</summary>
    private double ReachShare(Plan plan, int? draw)
    {
        double share = ReachShare(plan.Aid, plan, draw);
        return plan.Companion is { } companion ? Math.Min(share, ReachShare(companion, plan, draw)) : share;
    }

    /// <summary>Probability that the cleaning method gets to the skin; in a drawn case 0 or 1. What only pats dry may fall short: the skin is clean, and wet.
    /// Where a trial says more of reach than was predicted, it counts.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="values">Its values.</param>
    /// <param name="person">The person.</param>
    internal double Arrives(Plan plan, ReadOnlySpan<double> values, DrawnPerson person) => Math.Max(values[(int)Criterion.Reach], ReachShare(person.Numbers.Of(plan).Aid, plan, person.Draw));

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
        double share = ReachShare(plan.Aid, plan, null);
        Aid? shortest = plan.Aid.Reach != ReachKind.None ? plan.Aid : null;
        if (plan.Companion is { } companion)
        {
            double ofCompanion = ReachShare(companion, plan, null);
            shortest = companion.Reach != ReachKind.None && (shortest is null || ofCompanion < share) ? companion : shortest;
            share = Math.Min(share, ofCompanion);
        }

        return new()
        {
            Need = shortest is not null && plan.Approach is { } approach ? Reach.Need(plan.Posture, approach) : null,
            GivenLength = shortest is null ? double.PositiveInfinity : Length(shortest),
            ByBareHand = shortest?.Reach == ReachKind.BareHand,
            SeenShort = shortest?.Reach == ReachKind.BareHand && plan.Approach is { } seen && SeenShort(seen) is not null,
            ReachShare = share,
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

        if (draw is { } number)
        {
            var need = Reach.Need(plan.Posture, approach);
            return !need.Allowed ? 0 : need.Draws.IsEmpty ? OfTheMiddle(aid, need) : OfDraw(aid, need, number % need.Draws.Length);
        }

        if (!_shares.TryGetValue(aid, out double[]? shares))
        {
            _shares[aid] = shares = new double[Postures * Approaches];
            Array.Fill(shares, double.NaN);
        }

        ref double share = ref shares[((int)plan.Posture * Approaches) + (int)approach];
        if (double.IsNaN(share))
        {
            var need = Reach.Need(plan.Posture, approach);
            share = need.Allowed ? OfTheMiddle(aid, need) : 0;
        }

        return share;
    }

    private double OfTheMiddle(Aid aid, ReachNeed need) => aid.Reach == ReachKind.BareHand
        ? Math.Min(Math.Max(need.ProbabilityBareHand(), SeenAtTheSkin(need.Approach)), SeenShort(need.Approach) ?? 1)
        : need.ProbabilityLongEnough(Length(aid), aid.Shape);

    private double OfDraw(Aid aid, ReachNeed need, int i)
    {
        if (aid.Reach == ReachKind.BareHand)
        {
            // The same part of the persons in every draw, so that plans are compared on the same persons.
            bool reaches = need.Draws[i] - need.Stroke <= need.HandReach[i] || (i + 0.5) / need.Draws.Length < SeenAtTheSkin(need.Approach);
            return reaches && (SeenShort(need.Approach) is not { } most || (i + 0.5) / need.Draws.Length < most) ? 1 : 0;
        }

        return need.Draws[i] <= Length(aid) - (aid.Shape == AidShape.Straight ? need.StraightExtra : 0) ? 1 : 0;
    }

    /// <summary>Share of persons whose hand alone is enough because it was seen at the skin or past it; 0 where it was not. What was seen counts before what is computed.</summary>
    private double SeenAtTheSkin(Approach approach) => _seenAtTheSkin[(int)approach] ??= LookedUpAtTheSkin(approach);

    private double LookedUpAtTheSkin(Approach approach)
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
        ref var seen = ref _seenShort[(int)approach];
        if (!seen.IsKnown)
        {
            seen = (true, LookedUpShort(approach));
        }

        return seen.Most;
    }

    private double? LookedUpShort(Approach approach)
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

    private double Handling(Plan plan, DrawnPerson person)
    {
        if (person.Draw is not null)
        {
            return Handled(plan, person);
        }

        var tools = Tools.Of(plan);
        if (!_handling.TryGetValue(tools, out double handling))
        {
            _handling[tools] = handling = Handled(plan, person);
        }

        return handling;
    }

    private static double Handled(Plan plan, DrawnPerson person)
    {
        double handled = Handled(plan.Aid, plan, person);
        return plan.Companion is { } companion ? Math.Min(handled, Handled(companion, plan, person)) : handled;
    }

    private static double Handled(Aid aid, Plan plan, DrawnPerson person) =>
        aid.Method == MethodKind.Helper ? person.Numbers.Hand.Coefficients.Helped : DemandsOf(aid, plan, person).Score(person.Strength).Value;

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
