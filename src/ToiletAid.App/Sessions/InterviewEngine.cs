using System.Collections.Immutable;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Sessions;

/// <summary>One interview under way: what is asked now, what was answered, and the way back. Both front ends run on it.</summary>
public sealed class InterviewEngine
{
    private readonly QuestionSet _questions;
    private readonly Func<Answers, ImmutableArray<Question>> _open;
    private readonly Stack<QuestionId> _asked = new();
    private readonly Dictionary<QuestionId, Answer> _earlier = [];
    private readonly SortedDictionary<string, double> _parts = new(StringComparer.Ordinal);
    private Question? _question;
    private HowObtained? _partsHow;
    private int _part;
    private bool _finished;
    private ImmutableSortedSet<int>? _ticks;

    /// <summary>Starts an interview.</summary>
    /// <param name="questions">The questions.</param>
    /// <param name="open">The questions still to be asked, the next one first.</param>
    public InterviewEngine(QuestionSet questions, Func<Answers, ImmutableArray<Question>> open)
    {
        _questions = questions;
        _open = open;
        Note.OnChange = () => OnChange?.Invoke(AnswersSoFar);
        Move();
    }

    /// <summary>Takes up what was answered before, as if it had been answered now in the order of the questions, and what was noted.</summary>
    public void TakeUp(Session session)
    {
        ArgumentNullException.ThrowIfNull(session);
        var answers = session.Answers;
        Note.TakeUp(session.Note);
        foreach (var question in _questions.All.Where(q => answers[q.Id] is not null))
        {
            Answers = Answers.With(question.Id, answers[question.Id]!);
            _asked.Push(question.Id);
        }

        Move();
    }

    /// <summary>The free note of the visit.</summary>
    public SessionNote Note { get; } = new();

    /// <summary>What was answered so far.</summary>
    public Answers Answers { get; private set; } = Answers.None;

    /// <summary>The same with the parts of the question asked now that were given already: nothing typed and taken is missing.</summary>
    public Answers AnswersSoFar => _question is { Kind: QuestionKind.Parts } question && _parts.Count > 0
        ? Answers.With(question.Id, new(GivenParts(question), _partsHow ?? question.Usually))
        : Answers;

    /// <summary>What is asked now; null when nothing is left to ask.</summary>
    public Step? Current => _question is null ? null
        : _question.Kind == QuestionKind.Parts ? new(_question, _question.Parts[_part], _part + 1)
        : new(_question, null, 0);

    /// <summary>Number of the question asked now, from 1.</summary>
    public int Position => _asked.Count + 1;

    /// <summary>How many questions there are, as far as is known now.</summary>
    public int Total { get; private set; }

    /// <summary>The answer that was given before going back; null when the question is new.</summary>
    public Answer? Earlier => _question is null ? null : _earlier.GetValueOrDefault(_question.Id);

    /// <summary>Options of the question asked now that are ticked, from 0: those ticked since it was asked, else those of the answer that was given before
    /// going back. A look at something else, or the other mode, drops none.</summary>
    public ImmutableSortedSet<int> Ticked => _ticks ?? (Earlier?.Value is AnswerValue.Many { Options: var ids }
        ? [.. ids.Select(id => _question!.Options.IndexOf(_question.FindOption(id)!))] : []);

    /// <summary>Keeps which options are ticked while the question is asked.</summary>
    /// <param name="options">Places of the options, from 0.</param>
    public void Tick(IEnumerable<int> options) => _ticks = [.. options];

    /// <summary>Questions that were answered, in the order in which they were asked.</summary>
    public IEnumerable<(Question Question, Answer Answer)> Given =>
        _asked.Reverse().Select(id => (_questions[id], Answers[id]!));

    /// <summary>Called with all answers after each change, so that they can be kept.</summary>
    public Action<Answers>? OnChange { get; set; }

    /// <summary>Takes an answer as typed: a number of the list, a name from it or a quantity, and after it, if wanted, how it was obtained.</summary>
    /// <remarks>A question of several parts has one way in which it was obtained: the one that was typed last with a part of it.</remarks>
    /// <param name="text">As typed; nothing keeps the answer that was given before going back.</param>
    /// <exception cref="InvalidOperationException">Nothing is asked.</exception>
    public Reply Submit(string text)
    {
        var question = _question ?? throw new InvalidOperationException("nothing is asked");
        text = text.Trim();
        if (text.Length == 0)
        {
            return question.Kind == QuestionKind.Parts ? KeepPart() : Held is { } held ? Keep(held) : Refuse("Nothing was typed.");
        }

        if (AnswersById.IsMeant(_questions, question, text))
        {
            return Give(text);
        }

        var (rest, how) = AnswerParser.SplitHow(text);
        if (question.Kind == QuestionKind.Parts)
        {
            return Part(question, rest, how);
        }

        var (value, fault) = AnswerParser.Parse(question, rest);
        return value is null ? Refuse(fault) : Keep(new(value, how ?? question.Usually));
    }

    /// <summary>Takes answers to any questions, each as the id of the question, an equals sign and the answer, such as behind=cleft grasp=whole-hand. All of
    /// them are taken or none.</summary>
    /// <param name="text">As typed.</param>
    public Reply Give(string text)
    {
        var (given, fault) = AnswersById.Read(_questions, text);
        if (fault.Length > 0)
        {
            return new(false, fault, "Not taken. Answer");
        }

        foreach (var (question, answer) in given)
        {
            Answers = Answers.With(question.Id, answer);
            if (!_asked.Contains(question.Id))
            {
                _asked.Push(question.Id);
            }
        }

        OnChange?.Invoke(Answers);
        Move();
        return new(true, string.Join(' ', given.Select(g => $"{g.Question.Prompt} {AnswerWording.Of(g.Question, g.Answer.Value)}.")));
    }

    /// <summary>Takes an answer that is not typed, such as one from a file.</summary>
    /// <exception cref="ArgumentException">That question is not asked now.</exception>
    public void Take(Question question, Answer answer)
    {
        if (question.Id != _question?.Id)
        {
            throw new ArgumentException($"{question.Id} is not asked now", nameof(question));
        }

        Put(question, answer);
    }

    /// <summary>Notes that the answer, or this part of it, is not known.</summary>
    /// <exception cref="InvalidOperationException">Nothing is asked.</exception>
    public Reply Unknown()
    {
        var question = _question ?? throw new InvalidOperationException("nothing is asked");
        if (question.Kind == QuestionKind.Parts)
        {
            _parts.Remove(question.Parts[_part].Id);
            return NextPart(question, $"{question.Parts[_part].Label} left out.");
        }

        return Keep(new(new AnswerValue.NotKnown(), null));
    }

    /// <summary>Goes back one question, or one part; false at the first one.</summary>
    public bool Back()
    {
        if (_question is { Kind: QuestionKind.Parts } && _part > 0)
        {
            _part--;
            return true;
        }

        if (_asked.Count == 0)
        {
            return false;
        }

        var id = _asked.Pop();
        _earlier[id] = Answers[id]!;
        Answers = Answers.Without(id);
        OnChange?.Invoke(Answers);
        _finished = false;
        Show(_questions[id]);
        return true;
    }

    /// <summary>True when the person asked for the result before all was asked.</summary>
    public bool IsEndedEarly => _finished;

    /// <summary>Asks nothing more but the questions on safety that are open; each of them takes an answer that it is not known.</summary>
    /// <returns>Why something is still asked; empty when nothing is.</returns>
    public string Finish()
    {
        _finished = true;
        Move();
        return _question is null ? string.Empty : "Questions on safety are never skipped.";
    }

    /// <summary>What has to be typed, short enough for the line with the cursor.</summary>
    /// <exception cref="InvalidOperationException">Nothing is asked.</exception>
    public string Wanted()
    {
        var question = _question ?? throw new InvalidOperationException("nothing is asked");
        string keep = Held is { } held ? $", Enter keeps {AnswerWording.Typed(question, held.Value)}" : string.Empty;
        return question.Kind switch
        {
            QuestionKind.Choice => keep.Length > 0 ? $"1 to {question.Options.Length}{keep}" : $"Number 1 to {question.Options.Length}",
            QuestionKind.Many => keep.Length > 0 ? $"Numbers{keep}" : "Numbers, or none",
            QuestionKind.Order => "Numbers in order",
            QuestionKind.Parts when _parts.TryGetValue(question.Parts[_part].Id, out double degrees) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Degrees, Enter keeps {degrees}"),
            QuestionKind.Parts => "Degrees, or unknown",
            _ => WantedNumber(question) + keep,
        };
    }

    /// <summary>What Enter alone takes; null when nothing is held.</summary>
    private Answer? Held => _question is { Kind: QuestionKind.Many } question && _ticks is { Count: > 0 } ticks
        ? new(new AnswerValue.Many([.. ticks.Select(i => question.Options[i].Id)]), question.Usually)
        : _ticks is { Count: 0 } ? null : Earlier;

    private static string WantedNumber(Question question)
    {
        var unit = Core.Quantities.Units.Find(question.Number!.Units[0])!;
        return unit.Dimension == Core.Quantities.Dimension.Number ? "A number" : $"In {question.Number.Units[0]}";
    }

    private Reply Refuse(string fault) => new(false, fault, _question!.Kind switch
    {
        QuestionKind.Choice => $"Not 1 to {_question.Options.Length}. Number",
        QuestionKind.Many or QuestionKind.Order => $"Not 1 to {_question.Options.Length}. Numbers",
        _ => "Not taken. Number",
    });

    private Reply Part(Question question, string text, HowObtained? how)
    {
        var part = question.Parts[_part];
        var (value, fault) = AnswerParser.Number(part.Number, part.Id, text);
        if (value is null)
        {
            return Refuse(fault);
        }

        var first = Core.Quantities.Units.Find(part.Number.Units[0])!;
        double amount = value.Unit == first.Symbol ? value.Amount : Math.Round(first.FromSi(Core.Quantities.Units.Find(value.Unit)!.ToSi(value.Amount)), 1);
        _parts[part.Id] = amount;
        _partsHow = how ?? _partsHow;
        return NextPart(question, $"{part.Label} {Typed.Spoken.Amount(amount, first)}{Said(how)}.");
    }

    private Reply KeepPart()
    {
        var part = _question!.Parts[_part];
        return _parts.TryGetValue(part.Id, out double held)
            ? NextPart(_question, $"{part.Label} {Typed.Spoken.Amount(held, Core.Quantities.Units.Find(part.Number.Units[0])!)}.")
            : Refuse("Nothing was typed.");
    }

    private Reply NextPart(Question question, string said)
    {
        if (++_part < question.Parts.Length)
        {
            OnChange?.Invoke(AnswersSoFar);
            return new(true, said, string.Empty);
        }

        AnswerValue value = _parts.Count == 0
            ? new AnswerValue.NotKnown()
            : GivenParts(question);
        Put(question, new(value, _parts.Count == 0 ? null : _partsHow ?? question.Usually));
        return new(true, said, string.Empty);
    }

    private AnswerValue.Parts GivenParts(Question question) =>
        new(_parts.ToImmutableSortedDictionary(StringComparer.Ordinal), question.Parts[0].Number.Units[0]);

    private Reply Keep(Answer answer)
    {
        var question = _question!;
        Put(question, answer);
        return new(true, $"{Typed.Spoken.Capital(AnswerWording.Of(question, answer.Value))}{Said(answer.How == question.Usually ? null : answer.How)}.", string.Empty);
    }

    private static string Said(HowObtained? how) => how is { } h ? $", {Words.Of(h)}" : string.Empty;

    private void Put(Question question, Answer answer)
    {
        Answers = Answers.With(question.Id, answer);
        OnChange?.Invoke(Answers);
        _asked.Push(question.Id);
        Move();
    }

    private void Move()
    {
        var open = _open(Answers);
        if (_finished)
        {
            open = [.. open.Where(q => q.Safety)];
        }

        Total = _asked.Count + open.Length;
        if (open.IsEmpty)
        {
            _question = null;
            return;
        }

        Show(open[0]);
    }

    private void Show(Question question)
    {
        if (_question?.Id == question.Id)
        {
            // Answers to other questions were given meanwhile; what is held of this one stays.
            Total = Math.Max(Total, _asked.Count + 1);
            return;
        }

        _question = question;
        _part = 0;
        _parts.Clear();
        _partsHow = null;
        _ticks = null;
        if (question.Kind == QuestionKind.Parts && Earlier is { Value: AnswerValue.Parts held } earlier)
        {
            foreach (var (part, value) in held.Amounts)
            {
                _parts[part] = value;
            }

            _partsHow = earlier.How;
        }

        Total = Math.Max(Total, _asked.Count + 1);
    }
}
