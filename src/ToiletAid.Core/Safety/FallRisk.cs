using ToiletAid.Core.Knowledge;
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

        double points = c.Plan.Posture is Posture.HalfStanding or Posture.Standing ? c.Value(EvidenceIds.FallsOnTheLegs)
            : PlanFeatures.Leans(c.Plan) || PlanFeatures.PoseLeans(c) ? c.Value(EvidenceIds.FallsLean)
            : 0;
        bool feetHang = c.Plan.Posture == Posture.Seated && c.Known.Si(QuestionIds.Stature) < c.Value(EvidenceIds.BodyShort) && !c.Plan.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: false });
        return points + (feetHang ? c.Value(EvidenceIds.FallsFeetHang) : 0);
    }

    private static double OfPerson(RuleContext c) =>
        (c.Known.Si(QuestionIds.Age) >= c.Value(EvidenceIds.FallsOld) ? c.Value(EvidenceIds.FallsAge) : 0)
        + (c.Known.Choice(QuestionIds.Lean) == Lean.NotAtAll ? c.Value(EvidenceIds.FallsNoBalance) : 0)
        + (c.Known.Has(OptionIds.PrecautionDizzyWhenLeaning) ? c.Value(EvidenceIds.FallsDizzy) : 0)
        + (c.Known.Has(OptionIds.PrecautionNoWeightOnALeg) ? c.Value(EvidenceIds.FallsOneLeg) : 0)
        + (c.Known.Choice(QuestionIds.Tremor) == Tremor.Marked ? c.Value(EvidenceIds.FallsTremor) : 0)
        + (c.Known.Is(OptionIds.SightNone) ? c.Value(EvidenceIds.FallsSight) : 0)
        + (c.Known.Is(OptionIds.StepsOne) ? c.Value(EvidenceIds.FallsForgets) : 0);
}
