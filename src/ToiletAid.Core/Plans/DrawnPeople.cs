using System.Runtime.InteropServices;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>The persons that are drawn on some answers, each made when it is first looked at and kept: rankings with another grip look at the same.</summary>
internal sealed class DrawnPeople
{
    private readonly Func<int, Answers> _filled;
    private readonly Func<int, NumberSet> _numbers;
    private readonly Dictionary<int, DrawnCase> _cases = [];
    private readonly Dictionary<Plan, double[]?[]> _others = new(SameObject<Plan>.Comparer);

    /// <summary>Makes ready.</summary>
    /// <param name="knowledge">Questions.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="numbers">Numbers that plans are valued by, by number of the draw.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="likely">People who would give these answers; null to draw what is not known by itself.</param>
    internal DrawnPeople(KnowledgeBase knowledge, Answers known, Func<int, NumberSet> numbers, ulong seed, Answers[]? likely)
    {
        _filled = likely is null ? Assumptions.Drawing(knowledge.Questions, known, seed) : draw => likely[draw];
        _numbers = numbers;
        Seed = seed;
        Likely = likely;
    }

    /// <summary>Seed of the draws.</summary>
    internal ulong Seed { get; }

    /// <summary>People who would give the answers; null where what is not known is drawn by itself, whatever the grip.</summary>
    internal Answers[]? Likely { get; }

    /// <summary>One of them.</summary>
    /// <param name="draw">Number of the draw, from 0.</param>
    internal DrawnCase this[int draw]
    {
        get
        {
            if (!_cases.TryGetValue(draw, out var drawn))
            {
                _cases[draw] = drawn = new(_filled(draw), _numbers(draw), draw, this);
            }

            return drawn;
        }
    }

    /// <summary>Values of a plan on all criteria but handling, which alone depends on the grip, by number of the draw; null where they were not worked out yet.</summary>
    internal ref double[]? Others(Plan plan, int draw)
    {
        ref var rows = ref CollectionsMarshal.GetValueRefOrAddDefault(_others, plan, out _);
        if (rows is null || draw >= rows.Length)
        {
            Array.Resize(ref rows, Math.Max(64, draw + 1));
        }

        return ref rows[draw];
    }
}
