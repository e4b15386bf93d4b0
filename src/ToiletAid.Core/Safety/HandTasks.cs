using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Safety;

/// <summary>What a person's own hands can do besides the plan, so that nobody is told a task that they cannot do.</summary>
internal sealed class HandTasks
{
    private readonly KnowledgeBase _knowledge;
    private readonly HazardTable _hazards;
    private readonly Appraiser _appraiser;
    private readonly Dictionary<Posture, bool> _pats = [];
    private readonly Dictionary<Plan, bool> _hasNoAir = new(SameObject<Plan>.Comparer);
    private readonly double _patted;
    private readonly RuleCheck? _noAir;
    private readonly Dictionary<Plan, SettledPlan> _settled;
    private readonly Dictionary<Tools, RuleOutcomes> _ofTools;
    private readonly Dictionary<Tools, RuleOutcomes> _ofToolsAndGrip = [];
    private ImmutableArray<(RuleCheck Rule, RuleOutcome? Exposed)> _mayRuleOut;

    internal HandTasks(KnowledgeBase knowledge, HazardTable hazards, Appraiser appraiser, HandTasks? butForGrip)
    {
        _settled = butForGrip?._settled ?? new(SameObject<Plan>.Comparer);
        _ofTools = butForGrip?._ofTools ?? [];
        _mayRuleOut = butForGrip?._mayRuleOut ?? default;
        _knowledge = knowledge;
        _hazards = hazards;
        _appraiser = appraiser;
        _patted = knowledge.Evidence.Value(EvidenceIds.IndependencePatted);
        _noAir = hazards.Cautions.SingleOrDefault(r => r.Id == RuleIds.AirOnBrokenSkin);
        Alone = appraiser.Known.Choice(QuestionIds.Helper) == OptionIds.HelperNever.Text;
        Folds = FoldingAhead.HandCannot(appraiser.Known).Applies != true && appraiser.Middle.View.FollowsSteps >= knowledge.Evidence.Value(EvidenceIds.LearningPrepareSteps);
        Holds = appraiser.Known.Choice(QuestionIds.Grasp) is not (Grasp.PressWithPalmOrFist or Grasp.PressWithForearm or Grasp.None);
    }

    /// <summary>Values plans, whatever the hands do besides.</summary>
    internal Appraiser Appraiser => _appraiser;

    /// <summary>False where the hand cannot fold paper or the steps of folding are lost; true also where that is not known.</summary>
    internal bool Folds { get; }

    /// <summary>True where no carer is ever there.</summary>
    internal bool Alone { get; }

    /// <summary>True where the grasp is enough to hold on to something fixed, or is not known.</summary>
    internal bool Holds { get; }

    /// <summary>Rules that may rule a plan out for this person, each with whether the person is exposed, where that is the same for every plan. Most rules are
    /// settled by the answers alone, and there are hundreds of plans.</summary>
    internal ImmutableArray<(RuleCheck Rule, RuleOutcome? Exposed)> MayRuleOut
    {
        get
        {
            if (_mayRuleOut.IsDefault)
            {
                // No condition on the answers looks at the plan, so any will do.
                var person = new RuleContext(_knowledge, _appraiser.Known, new() { Aid = _knowledge.Catalogue.Aids[0], AddOns = [], Posture = Posture.Seated }, new());
                _mayRuleOut = [.. _hazards.RulesOut.Select(r => (r, Exposed: r.Exposed(person))).Where(r => r.Exposed?.Applies != false)];
            }

            return _mayRuleOut;
        }
    }

    /// <summary>What is the same of a plan whatever the grip.</summary>
    internal SettledPlan Settled(Plan plan)
    {
        if (!_settled.TryGetValue(plan, out var settled))
        {
            _settled[plan] = settled = new(_appraiser.ReachDemands(plan), new(MayRuleOut.Length));
        }

        return settled;
    }

    /// <summary>What rules say of a plan that look at tools alone, and not at the grip.</summary>
    internal RuleOutcomes OfTools(Plan plan) => Kept(_ofTools, plan);

    /// <summary>What rules say of a plan that look at tools alone, and at the grip.</summary>
    internal RuleOutcomes OfToolsAndGrip(Plan plan) => Kept(_ofToolsAndGrip, plan);

    /// <summary>True where the plan was seen to be ruled out whatever the grip; false also where nobody looked.</summary>
    internal bool IsRefused(Plan plan) => (_settled.TryGetValue(plan, out var settled) && settled.Outcomes.Applying > 0)
        || (_ofTools.TryGetValue(Tools.Of(plan), out var outcomes) && outcomes.Applying > 0);

    private RuleOutcomes Kept(Dictionary<Tools, RuleOutcomes> kept, Plan plan)
    {
        var tools = Tools.Of(plan);
        if (!kept.TryGetValue(tools, out var outcomes))
        {
            kept[tools] = outcomes = new(MayRuleOut.Length);
        }

        return outcomes;
    }

    /// <summary>True where the bare hand can take up paper and gets to the skin in this posture, as the rules ask of a hand that cleans.</summary>
    /// <remarks>Only what the skin forbids does not count: paper is laid on where nothing may stroke.</remarks>
    internal bool Pats(Posture posture)
    {
        if (!_pats.TryGetValue(posture, out bool pats))
        {
            var plans =
                from hand in _knowledge.Catalogue.Aids
                where hand is { Reach: ReachKind.BareHand, Method: MethodKind.Wipe, Paper: not null }
                from way in hand.Approaches
                select new Plan { Aid = hand, AddOns = [], Posture = posture, Approach = way };
            _pats[posture] = pats = plans.Any(p => _appraiser.Demands(p) is { Handling.Possible: true } demands
                && !_hazards.RulesOut.Any(r => !r.Questions.Contains(QuestionIds.Skin) && r.Check(new(_knowledge, _appraiser.Known, p, demands)).Applies == true));
        }

        return pats;
    }

    /// <summary>Values of a plan on every criterion, with what another person has to do after it counted: a wash that leaves water where this hand cannot pat.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="person">The person.</param>
    /// <param name="values">Receives them, in the order of the criteria.</param>
    internal void Values(Plan plan, DrawnPerson person, Span<double> values)
    {
        _appraiser.Values(plan, person, values);
        if (values[(int)Criterion.Independence] > _patted && IsLeftWet(plan) && !Pats(plan.Posture))
        {
            values[(int)Criterion.Independence] = _patted;
        }
    }

    /// <inheritdoc cref="Values(Plan, DrawnPerson, Span{double})"/>
    internal double[] Values(Plan plan, DrawnPerson person)
    {
        double[] values = new double[Criteria.Count];
        Values(plan, person, values);
        return values;
    }

    /// <summary>True when the last that touches the skin is water, or air that this skin must not have.</summary>
    private bool IsLeftWet(Plan plan) => plan.Last.Method == MethodKind.Wash || (plan.Last.Method == MethodKind.WashAndDry && _noAir is not null && HasNoAir(_noAir, plan));

    private bool HasNoAir(RuleCheck noAir, Plan plan)
    {
        if (!_hasNoAir.TryGetValue(plan, out bool has))
        {
            _hasNoAir[plan] = has = noAir.Check(new(_knowledge, _appraiser.Known, plan, _appraiser.ReachDemands(plan))).Applies == true;
        }

        return has;
    }

    /// <summary>The rule in the words that fit the hands: a plan whose aid brings paper to the skin does it with the aid.</summary>
    internal Rule Fit(Rule rule, Plan plan) => rule.Hands switch
    {
        AskedOfHands.Hold => rule.For(Holds, Alone),
        AskedOfHands.Pat => rule.For(plan.Methods.Any(m => m.Method == MethodKind.Wipe) || Pats(plan.Posture), Alone),
        _ => rule,
    };

    /// <summary>The same for a rule that looks at no plan: one of the postures will do.</summary>
    internal Rule Fit(Rule rule) => rule.Hands switch
    {
        AskedOfHands.Hold => rule.For(Holds, Alone),
        AskedOfHands.Pat => rule.For(PlanSpace.Postures(_appraiser.Known).Any(Pats), Alone),
        _ => rule,
    };
}
