using System.Runtime.InteropServices;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Asking;

/// <summary>What was worked out for people before, found again by the answers that were looked up while it was worked out and by no others.</summary>
/// <remarks>Each node names the question that is looked up next; which one that is depends on the answers before it alone, because what is
/// worked out depends on nothing but answers.</remarks>
internal sealed class AnswerMemo<T>
{
    private readonly Node _root = new();
    private readonly List<QuestionId> _reads = [];

    /// <summary>What was worked out for such answers before; null where nothing was.</summary>
    /// <param name="codes">The answers that it is worked out from, as numbers.</param>
    internal Node? Kept(int[] codes)
    {
        var node = _root;
        while (!node.IsEnd)
        {
            if (node.Question < 0 || !node.Next.TryGetValue(codes[node.Question], out var next))
            {
                return null;
            }

            node = next;
        }

        return node;
    }

    /// <summary>What is worked out for a person.</summary>
    /// <param name="person">The person.</param>
    /// <param name="codes">The answers that it is worked out from, as numbers.</param>
    /// <param name="answers">The same answers; asked for only where nothing is kept.</param>
    /// <param name="work">Works it out; looks at nothing but the answers.</param>
    internal Node Find(LikelyPerson person, int[] codes, Func<LikelyPerson, Answers> answers, Func<Answers, T> work) => Kept(codes) ?? Work(person, codes, answers(person), work);

    private Node Work(LikelyPerson person, int[] codes, Answers answers, Func<Answers, T> work)
    {
        _reads.Clear();
        var value = work(answers.Watched(_reads));
        var node = _root;
        foreach (var question in _reads.Distinct())
        {
            node.Question = person.Coding.Index(question);
            ref var next = ref CollectionsMarshal.GetValueRefOrAddDefault(node.Next, codes[node.Question], out _);
            node = next ??= new();
        }

        (node.IsEnd, node.Value) = (true, value);
        return node;
    }

    internal sealed class Node
    {
        internal int Question { get; set; } = -1;

        internal bool IsEnd { get; set; }

        internal T? Value { get; set; }

        internal Dictionary<int, Node> Next => field ??= [];
    }
}
