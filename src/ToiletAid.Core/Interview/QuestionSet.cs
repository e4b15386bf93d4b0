using System.Collections.Frozen;
using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Interview;

/// <summary>The questions, in the order in which they are asked.</summary>
public sealed class QuestionSet
{
    private readonly FrozenDictionary<string, Question> _byId;

    /// <summary>Makes a set.</summary>
    /// <param name="questions">Questions in order; ids differ.</param>
    /// <exception cref="ArgumentException">Two questions share an id, or a clause names a question that is not there.</exception>
    public QuestionSet(ImmutableArray<Question> questions)
    {
        All = questions;
        _byId = questions.ToFrozenDictionary(q => q.Id.Text, StringComparer.Ordinal);
        var lost = questions.SelectMany(q => q.AskWhen).FirstOrDefault(c => !_byId.ContainsKey(c.Question));
        if (lost is not null)
        {
            throw new ArgumentException($"no question '{lost.Question}' for a condition", nameof(questions));
        }
    }

    /// <summary>The questions in order.</summary>
    public ImmutableArray<Question> All { get; }

    /// <summary>The question called <paramref name="id"/>.</summary>
    /// <exception cref="KeyNotFoundException">No such question.</exception>
    public Question this[QuestionId id] => _byId[id.Text];

    /// <summary>The question called <paramref name="id"/>, or null.</summary>
    public Question? Find(string id) => _byId.GetValueOrDefault(id);
}
