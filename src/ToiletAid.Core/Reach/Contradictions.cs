using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Finds quick answers that measured joints cannot bring about, or should have surpassed, even when every measurement is off by
/// its error.</summary>
internal static class Contradictions
{
    private const double Errors = 2;

    public static ImmutableArray<ReachContradiction> Find(ReachNumbers numbers, ReachPerson person, PersonModel model, LandmarkReach landmarks)
    {
        var found = ImmutableArray.CreateBuilder<ReachContradiction>();
        double behind = (model.Behind.Low + model.Behind.High) / 2;
        if (person.Behind is { } b && model.HasJointsBehind)
        {
            PersonDraw best = model.Middle(1, 1, Errors), worst = model.Middle(0, 1, -Errors);
            double missing = b == LandmarkBehind.NotPastTheHip ? 0 : landmarks.MissingBehind(in best, b);
            double beyond = b == LandmarkBehind.WaistOrAbove ? 0 : -landmarks.MissingBehind(in worst, b + 1);
            Add(found, "reach-behind", missing, beyond);
        }

        if (person.Front is { } f && !person.Joints.IsEmpty)
        {
            PersonDraw best = model.Middle(1, 1, Errors), worst = model.Middle(behind, 0, -Errors);
            double missing = f == LandmarkFront.NotPastMidThigh ? 0 : landmarks.MissingFront(in best, f);
            double beyond = f == LandmarkFront.PastTheGroin ? 0 : -landmarks.MissingFront(in worst, f + 1);
            Add(found, "reach-front", missing, beyond);
        }

        if (person.Lean is { } lean && person.LeanForward is { } degrees)
        {
            Lean(found, numbers, lean, degrees);
        }

        return found.ToImmutable();
    }

    private static void Add(ImmutableArray<ReachContradiction>.Builder found, string question, double missing, double beyond)
    {
        if (missing > 0)
        {
            found.Add(new ReachContradiction(question, "joints", missing, 0, AnswerIsTooGood: true));
        }
        else if (beyond > 0)
        {
            found.Add(new ReachContradiction(question, "joints", beyond, 0, AnswerIsTooGood: false));
        }
    }

    private static void Lean(ImmutableArray<ReachContradiction>.Builder found, ReachNumbers numbers, Lean lean, ReachInput degrees)
    {
        double error = Errors * numbers.JointError(JointMotion.TrunkFlexion, degrees.How);
        bool leans = lean is Core.Person.Lean.Forward or Core.Person.Lean.Both;
        double least = numbers.Range("lean.forward.yes").Low, most = numbers.Range("lean.forward.no").High;
        if (leans && degrees.Value + error < least)
        {
            found.Add(new ReachContradiction("lean", "lean-degrees", 0, least - degrees.Value - error, AnswerIsTooGood: true));
        }
        else if (!leans && degrees.Value - error > most)
        {
            found.Add(new ReachContradiction("lean", "lean-degrees", 0, degrees.Value - error - most, AnswerIsTooGood: false));
        }
    }
}
