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

    internal HandTasks(KnowledgeBase knowledge, HazardTable hazards, Appraiser appraiser)
    {
        _knowledge = knowledge;
        _hazards = hazards;
        _appraiser = appraiser;
        Folds = FoldingAhead.HandCannot(appraiser.Known).Applies != true && appraiser.Middle.View.FollowsSteps >= knowledge.Evidence.Value("learning.prepare-steps");
        Holds = appraiser.Known.Choice(QuestionIds.Grasp) is not (Grasp.PressWithPalmOrFist or Grasp.PressWithForearm or Grasp.None);
    }

    /// <summary>False where the hand cannot fold paper or the steps of folding are lost; true also where that is not known.</summary>
    internal bool Folds { get; }

    /// <summary>True where the grasp is enough to hold on to something fixed, or is not known.</summary>
    internal bool Holds { get; }

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

    /// <summary>The rule in the words that fit the hands: a plan whose aid brings paper to the skin does it with the aid.</summary>
    internal Rule Fit(Rule rule, Plan plan) => rule.Hands switch
    {
        AskedOfHands.Hold => rule.For(Holds),
        AskedOfHands.Pat => rule.For(plan.Methods.Any(m => m.Method == MethodKind.Wipe) || Pats(plan.Posture)),
        _ => rule,
    };

    /// <summary>The same for a rule that looks at no plan: one of the postures will do.</summary>
    internal Rule Fit(Rule rule) => rule.Hands switch
    {
        AskedOfHands.Hold => rule.For(Holds),
        AskedOfHands.Pat => rule.For(PlanSpace.Postures(_appraiser.Known).Any(Pats)),
        _ => rule,
    };
}
