using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;

namespace ToiletAid.Core.Safety;

/// <summary>Reads conditions of the hazard table, and refuses a word that is neither a question with its options nor a feature of plans.</summary>
/// <remarks>A condition is made of <c>question=option|option</c>, <c>question=?</c> for not known, <c>question&gt;limit</c> for a number above an
/// entry of the evidence, and features by name, joined by <c>and</c>, <c>or</c>, <c>not</c> and brackets. <c>and</c> binds closer than <c>or</c>.</remarks>
internal sealed class ConditionReader
{
    private readonly QuestionSet _questions;
    private readonly EvidenceTable _evidence;
    private readonly string _text;
    private readonly string[] _words;
    private int _at;

    private ConditionReader(string text, QuestionSet questions, EvidenceTable evidence)
    {
        _text = text;
        _questions = questions;
        _evidence = evidence;
        _words = text.Replace("(", " ( ", StringComparison.Ordinal).Replace(")", " ) ", StringComparison.Ordinal)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    private string? Next => _at < _words.Length ? _words[_at] : null;

    /// <summary>The condition that a text says; an empty text always holds.</summary>
    /// <exception cref="ArgumentException">A word is not known, or the text breaks off.</exception>
    internal static Condition Read(string text, QuestionSet questions, EvidenceTable evidence)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return new Condition.Always();
        }

        var reader = new ConditionReader(text, questions, evidence);
        var condition = reader.Alternatives();
        return reader.Next is null ? condition : throw reader.Fault($"'{reader.Next}' is not expected");
    }

    private Condition Alternatives()
    {
        var parts = ImmutableArray.CreateBuilder<Condition>();
        do
        {
            parts.Add(Together());
        }
        while (Take("or"));

        return parts.Count == 1 ? parts[0] : new Condition.Any(parts.ToImmutable());
    }

    private Condition Together()
    {
        var parts = ImmutableArray.CreateBuilder<Condition>();
        do
        {
            parts.Add(Single());
        }
        while (Take("and"));

        return parts.Count == 1 ? parts[0] : new Condition.All(parts.ToImmutable());
    }

    private Condition Single()
    {
        if (Take("not"))
        {
            return new Condition.Not(Single());
        }

        if (Take("("))
        {
            var inside = Alternatives();
            return Take(")") ? inside : throw Fault("a bracket is not closed");
        }

        string word = Next ?? throw Fault("it breaks off");
        _at++;
        return Word(word);
    }

    private Condition Word(string word)
    {
        int sign = word.IndexOfAny(['=', '>']);
        if (sign < 0)
        {
            return new Condition.Brought(PlanFeatures.Find(word) ?? throw Fault($"'{word}' is not a feature of a plan"));
        }

        string id = word[..sign], after = word[(sign + 1)..];
        var question = _questions.Find(id) ?? throw Fault($"'{id}' is not a question");
        if (word[sign] == '>')
        {
            return _evidence.Find(after) is { } limit && question.Number is not null ? new Condition.Above(question.Id, limit) : throw Fault($"'{word}' compares no number with an entry of the evidence");
        }

        if (after == "?")
        {
            return new Condition.NotKnown(question.Id);
        }

        ImmutableArray<string> options = [.. after.Split('|')];
        return options.FirstOrDefault(o => question.FindOption(o) is null) is { } lost ? throw Fault($"'{lost}' is not an answer to {id}") : new Condition.Answered(question.Id, options);
    }

    private bool Take(string word)
    {
        bool there = Next == word;
        _at += there ? 1 : 0;
        return there;
    }

    private ArgumentException Fault(string what) => new($"in the condition '{_text}': {what}", (string?)null);
}
