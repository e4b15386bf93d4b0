using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Advising;

/// <summary>Reach of persons that were computed before. Most answers do not change the reach, and it is the most expensive part of the work.</summary>
/// <param name="knowledge">Bodies and joints.</param>
/// <param name="settings">Seed of the draws, how many persons are kept before it starts afresh, so that a long batch does not fill the memory, and who does the work.</param>
internal sealed class ReachMemory(KnowledgeBase knowledge, AdviceSettings settings)
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
            if (_studies.Count >= settings.ReachesKept)
            {
                _studies.Clear();
                _needs.Clear();
            }

            _studies[front] = study = new(knowledge.Body, person, draws, settings.Seed);
        }

        var postures = PlanSpace.Postures(known);
        var missing = (from posture in postures from approach in Enum.GetValues<Approach>() where !_needs.ContainsKey(Key(posture, approach)) select (posture, approach)).ToArray();
        var solved = new ReachNeed[missing.Length];
        settings.ForAll(missing.Length, i => solved[i] = study.Solve(missing[i].posture, missing[i].approach));
        foreach (var need in solved)
        {
            _needs[Key(need.Posture, need.Approach)] = need;
        }

        return study.Report(postures, [], (posture, approach) => _needs[Key(posture, approach)]);

        (ReachKey Person, Posture Posture, Approach Approach) Key(Posture posture, Approach approach) => (approach == Approach.Front ? front : others, posture, approach);
    }
}
