using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Finds quick answers that measured joints cannot bring about, or should have surpassed, even when every measurement is off by
/// its error.</summary>
internal static class Contradictions
{
    public static ImmutableArray<ReachContradiction> Find(ReachNumbers numbers, ReachPerson person, PersonModel model, LandmarkReach landmarks)
    {
        var found = ImmutableArray.CreateBuilder<ReachContradiction>();
        double errors = numbers.ContradictionErrors;
        double behind = (model.Behind.Low + model.Behind.High) / 2;
        if (person.Behind is { } b && model.HasJointBehind)
        {
            PersonDraw best = model.Middle(1, 1, errors), worst = model.Middle(0, 1, -errors);
            double missing = b == LandmarkBehind.NotPastTheHip ? 0 : landmarks.MissingBehind(in best, b);
            double beyond = b == LandmarkBehind.WaistOrAbove ? 0 : -landmarks.MissingBehind(in worst, b + 1);
            Add(found, QuestionIds.ReachBehind, missing, beyond);
        }

        if (person.Front is { } f && !person.Joints.IsEmpty)
        {
            PersonDraw best = model.Middle(1, 1, errors), worst = model.Middle(behind, 0, -errors);
            double missing = f == LandmarkFront.NotPastMidThigh ? 0 : landmarks.MissingFront(in best, f);
            double beyond = f == LandmarkFront.PastTheGroin ? 0 : -landmarks.MissingFront(in worst, f + 1);
            Add(found, QuestionIds.ReachFront, missing, beyond);
        }

        if (person is { Lean: { } forward, LeanForward: { } forwardBy })
        {
            Lean(found, numbers, forward is Core.Person.Lean.Forward or Core.Person.Lean.Both, forwardBy, numbers.LeansForward.Low, numbers.LeansNotForward.High);
        }

        if (person is { Lean: { } aside, LeanSideways: { } asideBy })
        {
            Lean(found, numbers, aside is Core.Person.Lean.ToASide or Core.Person.Lean.Both, asideBy, numbers.LeansSideways.Low, numbers.LeansNotSideways.High);
        }

        return found.ToImmutable();
    }

    private static void Add(ImmutableArray<ReachContradiction>.Builder found, QuestionId question, double missing, double beyond)
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

    /// <param name="found">Takes what is found.</param>
    /// <param name="numbers">Errors of angles.</param>
    /// <param name="leans">Whether the quick answer says that the person leans this way.</param>
    /// <param name="degrees">How far the person was found to lean this way, rad.</param>
    /// <param name="least">How far those at least lean who do, rad.</param>
    /// <param name="most">How far those at most lean who do not, rad.</param>
    private static void Lean(
        ImmutableArray<ReachContradiction>.Builder found, ReachNumbers numbers, bool leans, ReachInput degrees, double least, double most)
    {
        double error = numbers.ContradictionErrors * numbers.JointError(JointMotion.TrunkFlexion, degrees.How);
        if (leans && degrees.Value + error < least)
        {
            found.Add(new ReachContradiction(QuestionIds.Lean, "lean-degrees", 0, least - degrees.Value - error, AnswerIsTooGood: true));
        }
        else if (!leans && degrees.Value - error > most)
        {
            found.Add(new ReachContradiction(QuestionIds.Lean, "lean-degrees", 0, degrees.Value - error - most, AnswerIsTooGood: false));
        }
    }
}
