using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Advising;

/// <summary>Whether a kind is better in one of its variants. Only where it matters: a variant must earn what an add-on must earn, or make
/// possible what a rule forbids to the kind as it usually is.</summary>
/// <remarks>Tried are the best plan that is allowed, and of the plans that are worth more but forbidden one for each set of reasons; where the variant
/// lifts the reasons, the others that are forbidden for the same. So a variant that cannot matter costs a single look.</remarks>
/// <param name="knowledge">Rules, and what must be earned.</param>
/// <param name="plans">Kinds and plans in their variants.</param>
/// <param name="hands">What rules say of plans, and what values them.</param>
/// <param name="worth">Worth of a plan in the middle case, less what its add-ons must earn.</param>
internal sealed class VariantChoice(KnowledgeBase knowledge, PlanLists plans, HandTasks hands, Func<Plan, double> worth)
{
    private readonly double _gain = knowledge.Evidence.Value(EvidenceIds.PlansAddOnGain);

    /// <summary>The best plan in a variant, and its worth; null where no variant matters.</summary>
    /// <param name="aid">The kind.</param>
    /// <param name="refused">Plans of the kind as it usually is that rules forbid and that are worth at least what the allowed one is; all, where none is allowed.</param>
    /// <param name="usual">The best plan of the kind as it usually is, and its worth; null where none is allowed.</param>
    /// <param name="closest">The plan that came closest where none is allowed.</param>
    internal (Offer Offer, double Worth)? Better(Aid aid, List<(Plan Plan, PlanCheck Check)> refused, (Offer Offer, double Worth)? usual, RuledOutAid? closest)
    {
        if (aid.Variants.IsEmpty)
        {
            return null;
        }

        var groups = refused.GroupBy(r => string.Join('+', r.Check.Reasons.Select(f => f.Rule.Id)), r => r.Plan, StringComparer.Ordinal).ToList();
        double least = usual?.Worth + _gain ?? double.NegativeInfinity;
        (Offer Offer, double Worth)? best = null;
        foreach (var varied in plans.Variants(aid))
        {
            var allowed = new List<(Offer Offer, double Worth)>();
            if (usual is { } u && Allowed(u.Offer.Plan, varied, least) is { } same)
            {
                allowed.Add(same);
            }

            foreach (var group in groups.Where(g => Check(g.First(), varied).Reasons.IsEmpty))
            {
                allowed.AddRange(group.Select(p => Allowed(p, varied, least)).OfType<(Offer, double)>());
            }

            // A second tool is advised only where the own hand cannot do what is left.
            bool handWillDo = usual is { Offer.Plan.TakesTwoTools: false } || allowed.Any(a => a.Offer.Plan.Companion?.Reach == ReachKind.BareHand);
            foreach (var one in allowed.Where(a => !(handWillDo && a.Offer.Plan.TakesTwoTools)))
            {
                best = best is { } b && b.Worth >= one.Worth ? b : one;
            }
        }

        return best is { } found ? (found.Offer with { Otherwise = usual is null ? closest!.Reasons : [] }, found.Worth) : null;
    }

    private (Offer Offer, double Worth)? Allowed(Plan usual, Aid varied, double least)
    {
        var plan = plans.As(usual, varied);
        double value = worth(plan);
        return value > least && Check(usual, varied) is { Reasons.IsEmpty: true } check ? (new(plan, check.Demands, check.Unclear), value) : null;
    }

    private PlanCheck Check(Plan usual, Aid varied) => PlanCheck.Of(knowledge, hands, plans.As(usual, varied));
}
