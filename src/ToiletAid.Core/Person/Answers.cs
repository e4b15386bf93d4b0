using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>The answers of one session, by question, and what was tried until then.</summary>
public sealed class Answers
{
    /// <summary>No answers.</summary>
    public static readonly Answers None = new(new(StringComparer.Ordinal), []);

    // Not changed once others have it. Answers are looked up a thousand times for each time that they are changed.
    private readonly Dictionary<string, Answer> _items;

    private readonly List<QuestionId>? _reads;

    private Answers(Dictionary<string, Answer> items, ImmutableArray<PastTrial> trials, List<QuestionId>? reads = null)
    {
        _items = items;
        _reads = reads;
        Trials = trials;
    }

    /// <summary>Trials of plans, oldest first. They count whatever the answers become.</summary>
    public ImmutableArray<PastTrial> Trials { get; }

    /// <summary>Ids of the questions that were answered, also with "not known".</summary>
    public IEnumerable<QuestionId> Ids => _items.Keys.Select(id => new QuestionId(id));

    /// <summary>The answer to <paramref name="question"/>, or null when it was not asked.</summary>
    public Answer? this[QuestionId question]
    {
        get
        {
            _reads?.Add(question);
            return _items.GetValueOrDefault(question.Text);
        }
    }

    /// <summary>The same answers, which note the id of every question that is looked up: what is worked out from them depends on those answers and on no others.</summary>
    /// <param name="reads">Where they are noted.</param>
    internal Answers Watched(List<QuestionId> reads) => new(_items, Trials, reads);

    /// <summary>The same answers with this one put in or replaced.</summary>
    public Answers With(QuestionId question, Answer answer)
    {
        var items = Copied();
        items[question.Text] = answer;
        return new(items, Trials);
    }

    /// <summary>The same answers with all of these put in or replaced.</summary>
    public Answers With(IEnumerable<KeyValuePair<string, Answer>> answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var items = Copied();
        foreach (var (id, answer) in answers)
        {
            items[id] = answer;
        }

        return new(items, Trials);
    }

    /// <summary>The same answers without this one.</summary>
    public Answers Without(QuestionId question)
    {
        var items = Copied();
        items.Remove(question.Text);
        return new(items, Trials);
    }

    /// <summary>The same answers, which may be changed by <see cref="Put"/> as long as nobody else has been given them.</summary>
    internal Answers Apart() => new(Copied(), Trials);

    /// <summary>Puts an answer in, replaces it or takes it away, where the answers were made by <see cref="Apart"/> and are still being put together.</summary>
    /// <param name="question">The question.</param>
    /// <param name="answer">The answer; null for none.</param>
    internal void Put(QuestionId question, Answer? answer)
    {
        if (answer is null)
        {
            _items.Remove(question.Text);
        }
        else
        {
            _items[question.Text] = answer;
        }
    }

    /// <summary>The same answers with these trials in place of others.</summary>
    public Answers With(ImmutableArray<PastTrial> trials) => new(_items, trials);

    /// <summary>True when the question was answered with something known.</summary>
    public bool Knows(QuestionId question) => this[question] is { Value: not AnswerValue.NotKnown };

    /// <summary>The chosen option, or null when not asked, not known or not a choice.</summary>
    public string? Choice(QuestionId question) => (this[question]?.Value as AnswerValue.Choice)?.Option;

    /// <summary>The chosen member of an enum, or null when not asked, not known or not a choice.</summary>
    public T? Choice<T>(ChoiceId<T> question)
        where T : struct, Enum =>
        Words.Find<T>(Choice((QuestionId)question));

    /// <summary>True when one of these options was chosen; false also when the question was not asked or the answer is not known.</summary>
    /// <param name="options">Options of one question with one choice.</param>
    public bool Is(params ReadOnlySpan<OptionId> options)
    {
        if (Choice(options[0].Question) is { } choice)
        {
            foreach (var option in options)
            {
                if (choice == option.Text)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>True when this option is among those chosen; false also when the question was not asked or the answer is not known.</summary>
    /// <param name="option">Option of a question with many choices.</param>
    public bool Has(OptionId option) => Many(option.Question) is { } many && many.Contains(option.Text);

    /// <summary>The chosen options, or null when not asked or not known.</summary>
    public ImmutableArray<string>? Many(QuestionId question) => (this[question]?.Value as AnswerValue.Many)?.Options;

    /// <summary>The number, in SI, or null when not asked, not known or not a number.</summary>
    public double? Si(QuestionId question) =>
        this[question]?.Value is AnswerValue.Number n && Quantities.Units.Find(n.Unit) is { } unit ? unit.ToSi(n.Amount) : null;

    private Dictionary<string, Answer> Copied() => new(_items, StringComparer.Ordinal);
}
