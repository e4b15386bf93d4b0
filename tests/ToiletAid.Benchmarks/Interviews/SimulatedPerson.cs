using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>A simulated person with every answer, and what the full ranking says when all of them are known: the judge of an interview.</summary>
internal sealed class SimulatedPerson
{
    private readonly Dictionary<string, RankedPlan> _ranked;

    private SimulatedPerson(Answers answers, Advice advice)
    {
        Answers = answers;
        Advice = advice;
        _ranked = advice.Ranked.ToDictionary(r => r.Plan.Aid.Id, StringComparer.Ordinal);
    }

    /// <summary>All answers.</summary>
    internal Answers Answers { get; }

    /// <summary>Advice on all of them.</summary>
    internal Advice Advice { get; }

    /// <summary>The kind that all answers put first; null where nothing can be offered.</summary>
    internal string? First => Advice.Ranked.IsEmpty ? null : Advice.Ranked[0].Plan.Aid.Id;

    /// <summary>People of a seed from number 0 who are not stopped by a red flag.</summary>
    internal static IEnumerable<SimulatedPerson> Of(KnowledgeBase knowledge, PeopleModel model, ulong seed, int people)
    {
        var simulator = new PeopleSimulator(knowledge, model);
        var advisor = new Advisor(knowledge, new() { AsksGrip = false });
        for (long number = 0; people > 0; number++)
        {
            var answers = simulator.Make(seed, number, Depth.Full, new(2026, 1, 1)).Latest.Answers;
            if (advisor.Stops(answers).IsEmpty)
            {
                people--;
                yield return new(answers, advisor.Advise(answers));
            }
        }
    }

    /// <summary>The answer to a question; not known where the person's other answers make it pointless.</summary>
    internal Answer Answer(string question) => Answers[new(question)] ?? new(new AnswerValue.NotKnown(), null);

    /// <summary>True when a kind is not offered once all answers are known.</summary>
    internal bool IsRuledOut(string kind) => !_ranked.ContainsKey(kind);

    /// <summary>The kind and the rules that forbid it under all answers; null where none does.</summary>
    internal string? Forbids(string kind) =>
        Advice.RuledOut.FirstOrDefault(r => r.Aid.Id == kind) is { } forbidden ? $"{kind} by {string.Join(" and ", forbidden.Reasons.Select(r => r.Rule.Id))}" : null;

    /// <summary>Place of a kind under all answers; a large one where it is ruled out.</summary>
    internal int Place(string kind) => _ranked.TryGetValue(kind, out var ranked) ? ranked.Rank : int.MaxValue;

    /// <summary>Worth that choosing a kind loses against the best, under all answers; a kind that is ruled out is worth nothing.</summary>
    internal double Loss(string kind) => Advice.Ranked.IsEmpty ? 0 : Advice.Ranked[0].Value - (_ranked.TryGetValue(kind, out var ranked) ? ranked.Value : 0);

    /// <summary>True when the posture of a plan is one that the person does not take.</summary>
    internal bool IsWrongPosture(Plan plan) => !Postures().Contains(plan.Posture);

    /// <summary>True when posture or way of a plan differ from those of the same kind under all answers.</summary>
    internal bool IsAnotherWay(Plan plan) =>
        _ranked.TryGetValue(plan.Aid.Id, out var ranked) && (ranked.Plan.Posture != plan.Posture || ranked.Plan.Approach != plan.Approach);

    private HashSet<Posture> Postures() => PlanSpace.Postures(Answers).ToHashSet();
}
