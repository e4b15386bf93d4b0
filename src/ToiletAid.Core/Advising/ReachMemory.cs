using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Advising;

/// <summary>Reach of persons that were computed before. Most answers do not change the reach, and it is the most expensive part of the work.</summary>
/// <param name="knowledge">Bodies and joints.</param>
/// <param name="seed">Seed of the draws.</param>
/// <param name="kept">How many persons are kept; then it starts afresh, so that a long batch does not fill the memory.</param>
internal sealed class ReachMemory(KnowledgeBase knowledge, ulong seed, int kept)
{
    private readonly Dictionary<ReachKey, ReachStudy> _studies = [];
    private readonly Dictionary<(ReachKey Person, Posture Posture, Approach Approach), ReachNeed> _needs = [];

    /// <summary>Reach on these answers.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="draws">Persons drawn; 0 for the middle one only.</param>
    internal ReachReport Of(Answers known, int draws)
    {
        var person = AnswerMapping.Reach(known);

        // How far the hand gets in front has no part in the ways from behind and from the side.
        ReachKey others = new(person, draws, withFront: false), front = new(person, draws, withFront: true);
        if (!_studies.TryGetValue(front, out var study))
        {
            if (_studies.Count >= kept)
            {
                _studies.Clear();
                _needs.Clear();
            }

            _studies[front] = study = new(knowledge.Body, person, draws, seed);
        }

        return study.Report(PlanSpace.Postures(known), [], (posture, approach) =>
        {
            var key = (approach == Approach.Front ? front : others, posture, approach);
            if (!_needs.TryGetValue(key, out var need))
            {
                _needs[key] = need = study.Solve(posture, approach);
            }

            return need;
        });
    }
}
