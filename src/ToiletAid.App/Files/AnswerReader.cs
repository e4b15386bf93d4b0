using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Files;

/// <summary>Reads the answers of a session and checks each against its question.</summary>
/// <param name="questions">The questions.</param>
internal sealed class AnswerReader(QuestionSet questions)
{
    /// <summary>How "not known" is written.</summary>
    internal const string NotKnown = "not-known";

    /// <summary>How "none of them" may be written in a list.</summary>
    internal const string None = "none";

    internal Answers Read(JsonWalker at)
    {
        var answers = Answers.None;
        foreach (var (id, item) in at.Members())
        {
            if (at.IsFull)
            {
                break;
            }

            if (questions.Find(id) is not { } question)
            {
                item.Fault("unknown-question", $"{JsonWalker.Shown(id)} is not a question{Suggestion(id, questions.All.Select(q => q.Id.Text))}");
                continue;
            }

            if (Answer(item, question) is { } answer)
            {
                answers = answers.With(question.Id, answer);
            }
        }

        return answers;
    }

    private static Answer? Answer(JsonWalker at, Question question)
    {
        if (at.Element.ValueKind != JsonValueKind.Object)
        {
            at.Fault("wrong-kind", $"{at.Quote()} should be an object with value and how");
            return null;
        }

        if (question.Number is null && question.Parts.IsEmpty)
        {
            at.OnlyMembers("value", "how");
        }
        else
        {
            at.OnlyMembers("value", "unit", "how");
        }

        HowObtained? how = null;
        if (at.Member("how") is { } h && h.Text() is { } word && (how = Words.Find<HowObtained>(word)) is null)
        {
            h.Fault("how", $"{h.Quote()} is not a way an answer is obtained, use {string.Join(", ", Words.All<HowObtained>())}");
        }

        if (at.Required("value") is not { } value || Value(value, at, question) is not { } known)
        {
            return null;
        }

        if (how is null && known is not AnswerValue.NotKnown && at.Member("how") is null)
        {
            at.Fault("missing-member", "how is missing, add observed, reported or measured");
        }

        return new(known, how);
    }

    private static AnswerValue? Value(JsonWalker value, JsonWalker answer, Question question)
    {
        if (value.Element.ValueKind == JsonValueKind.String && value.Element.ValueEquals(NotKnown))
        {
            return new AnswerValue.NotKnown();
        }

        return question.Kind switch
        {
            QuestionKind.Choice when question.Number is not null && IsNumber(value) => Number(value, answer, question.Number, question.Id),
            QuestionKind.Choice => Option(value, question) is { } o ? new AnswerValue.Choice(o.Id) : null,
            QuestionKind.Many => Many(value, question),
            QuestionKind.Number => Number(value, answer, question.Number!, question.Id),
            QuestionKind.Parts => Parts(value, answer, question),
            _ => Order(value, question),
        };
    }

    private static bool IsNumber(JsonWalker value) => value.Element.ValueKind == JsonValueKind.Number;

    private static Option? Option(JsonWalker value, Question question)
    {
        // The stool scale is read as a number too.
        string? id = value.Element.ValueKind is JsonValueKind.String ? value.Element.GetString()
            : IsNumber(value) ? value.Element.GetRawText()
            : null;
        if (id is not null && question.FindOption(id) is { } option)
        {
            return option;
        }

        string or = question.Number is null ? string.Empty : $" or a number in {question.Number.Units[0]}";
        value.Fault("unknown-option", $"{value.Quote()} is not an answer to {question.Id}, use {string.Join(", ", question.Options.Select(o => o.Id))}{or}, or {NotKnown}");
        return null;
    }

    private static AnswerValue.Many? Many(JsonWalker value, Question question)
    {
        var items = value.Items().ToList();
        if (value.Element.ValueKind != JsonValueKind.Array)
        {
            return null;
        }

        if (items is [var only] && only.Element.ValueKind == JsonValueKind.String && only.Element.ValueEquals(None))
        {
            return new([]);
        }

        var chosen = items.Select(i => Option(i, question)).OfType<Option>().ToHashSet();
        return chosen.Count < items.Count ? Short(value, items.Count, chosen.Count) : new([.. question.Options.Where(chosen.Contains).Select(o => o.Id)]);
    }

    private static AnswerValue.Many? Short(JsonWalker value, int items, int chosen)
    {
        if (chosen > 0 && value.Issues.Count == 0)
        {
            value.Fault("stands-twice", $"one of the {items} items appears twice, keep one of them");
        }

        return null;
    }

    private static AnswerValue.Number? Number(JsonWalker value, JsonWalker answer, NumberSpec spec, string id)
    {
        if (Amount(value) is not { } amount || UnitOf(answer, spec) is not { } unit)
        {
            return null;
        }

        return InRange(value, amount, unit, spec, id) ? new(amount, unit.Symbol) : null;
    }

    private static AnswerValue.Parts? Parts(JsonWalker value, JsonWalker answer, Question question)
    {
        var amounts = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        if (UnitOf(answer, question.Parts[0].Number) is not { } unit)
        {
            return null;
        }

        foreach (var (id, item) in value.Members())
        {
            var part = question.Parts.FirstOrDefault(p => p.Id == id);
            if (part is null)
            {
                item.Fault("unknown-part", $"{JsonWalker.Shown(id)} is not part of {question.Id}{Suggestion(id, question.Parts.Select(p => p.Id))}");
            }
            else if (Amount(item) is { } amount && InRange(item, amount, unit, part.Number, id))
            {
                amounts[id] = amount;
            }
        }

        return new(amounts.ToImmutable(), unit.Symbol);
    }

    private static AnswerValue.Order? Order(JsonWalker value, Question question)
    {
        var groups = new List<ImmutableArray<string>>();
        foreach (var item in value.Items())
        {
            var members = item.Element.ValueKind == JsonValueKind.Array ? item.Items() : [item];
            groups.Add([.. members.Select(m => Option(m, question)).OfType<Option>().Select(o => o.Id)]);
        }

        var all = groups.SelectMany(g => g).ToList();
        if (all.Distinct(StringComparer.Ordinal).Count() < all.Count)
        {
            value.Fault("stands-twice", "a criterion appears twice, keep one of them");
        }

        return value.Element.ValueKind == JsonValueKind.Array ? new([.. groups.Where(g => !g.IsEmpty)]) : null;
    }

    private static double? Amount(JsonWalker value)
    {
        if (IsNumber(value) && value.Element.TryGetDouble(out double amount) && double.IsFinite(amount))
        {
            return amount;
        }

        value.Fault("not-a-number", $"{value.Quote()} should be a number without quotes");
        return null;
    }

    private static Unit? UnitOf(JsonWalker answer, NumberSpec spec)
    {
        if (answer.Member("unit") is not { } at)
        {
            var usual = Units.Find(spec.Units[0])!;
            if (usual.Dimension == Dimension.Number)
            {
                return usual;
            }

            answer.Fault("missing-unit", $"unit is missing, add {string.Join(" or ", spec.Units)}");
            return null;
        }

        if (at.Text() is { } symbol && spec.Units.Contains(symbol))
        {
            return Units.Find(symbol);
        }

        at.Fault("unknown-unit", $"{at.Quote()} is not a unit for this, use {string.Join(" or ", spec.Units)}");
        return null;
    }

    private static bool InRange(JsonWalker value, double amount, Unit unit, NumberSpec spec, string id)
    {
        var usual = Units.Find(spec.Units[0])!;
        double inUsual = usual.FromSi(unit.ToSi(amount));

        // A millionth forgives the rounding of a change of unit at the very ends.
        double slack = 1e-6 * Math.Max(1, Math.Abs(spec.High));
        if (inUsual < spec.Low - slack || inUsual > spec.High + slack)
        {
            string turnedAway = spec.Below is { } below && inUsual >= 0 && inUsual < spec.Low ? $"; {below}" : string.Empty;
            string name = usual.Dimension == Dimension.Number ? string.Empty : " " + usual.Symbol;
            value.Fault("out-of-range", string.Create(CultureInfo.InvariantCulture, $"{amount} {unit.Symbol} is out of range for {id}, which is {spec.Low} to {spec.High}{name}, check the number and the unit{turnedAway}"));
            return false;
        }

        if (spec.Whole && amount != Math.Floor(amount))
        {
            value.Fault("not-whole", string.Create(CultureInfo.InvariantCulture, $"{amount} should be a whole number"));
            return false;
        }

        return true;
    }

    /// <summary>The nearest known word, as the end of a sentence: people mistype more often than they invent.</summary>
    private static string Suggestion(string word, IEnumerable<string> known)
    {
        string? near = known.Select(k => (Word: k, Distance: Distance(word, k))).OrderBy(p => p.Distance).Where(p => p.Distance <= 2).Select(p => p.Word).FirstOrDefault();
        return near is null ? ", the command toiletaid questions lists them" : $", did you mean {near}";
    }

    private static int Distance(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 2)
        {
            return int.MaxValue;
        }

        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int above = row[j];
                row[j] = Math.Min(Math.Min(row[j - 1], above) + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
