using ToiletAid.Core.Person;

namespace ToiletAid.Core.Safety;

/// <summary>How likely a fall is with this person in this plan, in points: what the plan asks of balance, then what the person brings to it.</summary>
/// <remarks>A plan that asks nothing of balance gives no points, whoever does it. What counts how much stands in the evidence. An answer that is not known counts nothing.</remarks>
internal static class FallRisk
{
    internal static double Points(RuleContext c)
    {
        double plan = OfPlan(c);
        return plan == 0 ? 0 : plan + OfPerson(c);
    }

    private static double OfPlan(RuleContext c)
    {
        if (c.Plan.Posture is Posture.SideLying or Posture.Reclined || c.Plan.Methods.All(m => m.Method == Catalogue.MethodKind.Helper))
        {
            return 0;
        }

        double points = c.Plan.Posture is Posture.HalfStanding or Posture.Standing ? c.Value("falls.on-the-legs")
            : PlanFeatures.Leans(c.Plan) || PlanFeatures.PoseLeans(c) ? c.Value("falls.lean")
            : 0;
        bool feetHang = c.Plan.Posture == Posture.Seated && c.Known.Si(QuestionIds.Stature) < c.Value("body.short") && !c.Plan.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: false });
        return points + (feetHang ? c.Value("falls.feet-hang") : 0);
    }

    private static double OfPerson(RuleContext c) =>
        (c.Known.Si(QuestionIds.Age) >= c.Value("falls.old") ? c.Value("falls.age") : 0)
        + (c.Known.Choice(QuestionIds.Lean) == Lean.NotAtAll ? c.Value("falls.no-balance") : 0)
        + (c.Known.Has(OptionIds.PrecautionDizzyWhenLeaning) ? c.Value("falls.dizzy") : 0)
        + (c.Known.Has(OptionIds.PrecautionNoWeightOnALeg) ? c.Value("falls.one-leg") : 0)
        + (c.Known.Choice(QuestionIds.Tremor) == Tremor.Marked ? c.Value("falls.tremor") : 0)
        + (c.Known.Is(OptionIds.SightNone) ? c.Value("falls.sight") : 0)
        + (c.Known.Is(OptionIds.StepsOne) ? c.Value("falls.forgets") : 0);
}
