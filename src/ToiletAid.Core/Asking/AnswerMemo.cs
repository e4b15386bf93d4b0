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
            if (node.Question < 0 || node.After(codes[node.Question]) is not { } next)
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
            node = node.Add(codes[node.Question]);
        }

        (node.IsEnd, node.Value) = (true, value);
        return node;
    }

    internal sealed class Node
    {
        /// <summary>Codes below this are places in an array: those of options are, those of amounts may not be.</summary>
        private const int Few = 64;

        private Node?[] _few = [];
        private Dictionary<int, Node>? _others;

        internal int Question { get; set; } = -1;

        internal bool IsEnd { get; set; }

        internal T? Value { get; set; }

        /// <summary>The node after an answer; null where there is none yet.</summary>
        /// <param name="code">The answer as a number, -1 for none.</param>
        internal Node? After(int code) => (uint)(code + 1) < (uint)_few.Length ? _few[code + 1] : _others?.GetValueOrDefault(code);

        /// <summary>The same, made where there is none yet.</summary>
        internal Node Add(int code)
        {
            if (After(code) is { } known)
            {
                return known;
            }

            var made = new Node();
            if (code is < -1 or >= Few - 1)
            {
                (_others ??= [])[code] = made;
                return made;
            }

            if (code + 1 >= _few.Length)
            {
                Array.Resize(ref _few, code + 2);
            }

            return _few[code + 1] = made;
        }
    }
}
