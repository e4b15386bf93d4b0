using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Advising;

/// <summary>How much the first place depends on a grip that was not measured.</summary>
/// <param name="WeakNewtons">Grip, N, that the share grip.weak-share of such people do not exceed.</param>
/// <param name="StrongNewtons">Grip, N, that the share grip.strong-share of such people do not exceed.</param>
/// <param name="WithWeak">First plan of a hand with the weak grip; null when none can be offered.</param>
/// <param name="WithStrong">First plan of a hand with the strong grip; null when none can be offered.</param>
public sealed record GripDependence(double WeakNewtons, double StrongNewtons, Plan? WithWeak, Plan? WithStrong)
{
    /// <summary>Ranks again with a weak and a strong grip. Null when grip was measured, when nothing is ranked, or when this hand does not grip at all.</summary>
    /// <param name="knowledge">Norms.</param>
    /// <param name="advisor">Ranks.</param>
    /// <param name="known">Answers as given.</param>
    internal static GripDependence? Of(KnowledgeBase knowledge, Advisor advisor, Answers known)
    {
        if (known.Knows(QuestionIds.Grip) || !advisor.Stops(known).IsEmpty)
        {
            return null;
        }

        var grip = knowledge.Hand.Capacity(AnswerMapping.Hand(Assumptions.Fill(knowledge.Questions, known))).Of(Grasp.WholeHand);
        if (!(grip.Median > 0))
        {
            return null;
        }

        double weak = grip.At(knowledge.Evidence.Value(EvidenceIds.GripWeakShare)), strong = grip.At(knowledge.Evidence.Value(EvidenceIds.GripStrongShare));
        var screened = advisor.Screened(known);
        return new(weak, strong, advisor.First(With(known, weak), screened), advisor.First(With(known, strong), screened));
    }

    private static Answers With(Answers known, double newtons) => known.With(QuestionIds.Grip, new(new AnswerValue.Number(newtons, "N"), HowObtained.Measured));
}
