using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Typed;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Sessions;

/// <summary>Reads what a person types as an answer: a number from the list, a name from it, or a quantity.</summary>
internal static class AnswerParser
{
    private static readonly char[] Separators = [',', ';', ' ', '\t'];

    /// <summary>Reads <paramref name="text"/> as an answer to <paramref name="question"/>; null with a reason when it is none.</summary>
    internal static (AnswerValue? Value, string Fault) Parse(Question question, string text) => question.Kind switch
    {
        QuestionKind.Many => Many(question, text),
        QuestionKind.Order => Order(question, text),
        QuestionKind.Number => Number(question.Number!, question.Id, text),
        QuestionKind.Parts => (null, "This question is answered part by part."),
        _ => Choice(question, text),
    };

    /// <summary>Reads a quantity for a question or a part of one.</summary>
    internal static (AnswerValue.Number? Value, string Fault) Number(NumberSpec spec, string id, string text)
    {
        var asked = QuantityQuestion.Of(id.Replace('-', ' '), spec.Low, spec.High, spec.Units.AsSpan()) with { IsCount = spec.Whole, Below = spec.Below };
        var reading = QuantityReader.Read(text, asked);
        return reading.Quantity is { } q ? (InAskedUnit(q, spec), string.Empty) : (null, reading.Refusal!);
    }

    /// <summary>The last word, when it says how the answer was obtained, and the rest.</summary>
    internal static (string Answer, HowObtained? How) SplitHow(string text)
    {
        int space = text.LastIndexOf(' ');
        string last = text[(space + 1)..].Trim().ToLowerInvariant();
        return Words.Find<HowObtained>(last) is { } how && space > 0 ? (text[..space].TrimEnd(' ', ','), how) : (text, null);
    }

    private static AnswerValue.Number InAskedUnit(TypedQuantity q, NumberSpec spec) =>
        spec.Units.Contains(q.Unit.Symbol) ? new(q.Value, q.Unit.Symbol)
        : new(Math.Round(Units.Find(spec.Units[0])!.FromSi(q.Si), 3), spec.Units[0]);

    private static (AnswerValue? Value, string Fault) Choice(Question question, string text)
    {
        if (Find(question, text) is { } option)
        {
            return (new AnswerValue.Choice(option.Id), string.Empty);
        }

        if (question.Number is { } spec && text.Any(char.IsAsciiDigit) && text.Any(char.IsLetter))
        {
            return Number(spec, question.Id, text);
        }

        string or = question.Number is null ? string.Empty : $", or a number with its unit, such as {Example(question.Number)}";
        return (null, $"{Spoken.Quoted(text, "That")} is not a number from 1 to {question.Options.Length} and not a name from the list{or}.");
    }

    private static string Example(NumberSpec spec) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round((spec.Low + spec.High) / 4)} {Units.Find(spec.Units[0])!.Name}");

    private static (AnswerValue? Value, string Fault) Many(Question question, string text)
    {
        if (IsNone(text) && question.FindOption("none") is null)
        {
            return (new AnswerValue.Many([]), string.Empty);
        }

        var chosen = new HashSet<Option>();
        foreach (string item in Items(question, text))
        {
            if (Find(question, item) is not { } option)
            {
                return (null, $"{Spoken.Quoted(item, "That")} is not a number from 1 to {question.Options.Length} and not a name from the list. Type none for none of them.");
            }

            chosen.Add(option);
        }

        return (new AnswerValue.Many([.. question.Options.Where(chosen.Contains).Select(o => o.Id)]), string.Empty);
    }

    private static (AnswerValue? Value, string Fault) Order(Question question, string text)
    {
        var groups = new List<List<string>>();
        bool join = false;
        foreach (string item in Items(question, text.Replace("=", " and ", StringComparison.Ordinal)))
        {
            if (item.Equals("and", StringComparison.OrdinalIgnoreCase))
            {
                join = groups.Count > 0;
                continue;
            }

            if (Find(question, item) is not { } option)
            {
                return (null, $"{Spoken.Quoted(item, "That")} is not a number from 1 to {question.Options.Length} and not a name from the list.");
            }

            if (groups.Any(g => g.Contains(option.Id)))
            {
                return (null, $"{Spoken.Quoted(item, "That")} appears twice. Each can have one place.");
            }

            if (!join)
            {
                groups.Add([]);
            }

            groups[^1].Add(option.Id);
            join = false;
        }

        return (new AnswerValue.Order([.. groups.Select(g => g.ToImmutableArray())]), string.Empty);
    }

    /// <summary>Commas separate names of several words; without a comma, spaces separate when each piece is a number or a name.</summary>
    private static string[] Items(Question question, string text)
    {
        string[] byComma = text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return question.Kind == QuestionKind.Many && byComma.All(i => Find(question, i) is not null)
            ? byComma
            : text.Split(Separators, StringSplitOptions.RemoveEmptyEntries);
    }

    private static bool IsNone(string text) => text is "0" || text.Equals("none", StringComparison.OrdinalIgnoreCase);

    private static Option? Find(Question question, string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            return number >= 1 && number <= question.Options.Length ? question.Options[number - 1] : null;
        }

        string wanted = Plain(text);
        if (wanted.Length == 0)
        {
            return null;
        }

        var exact = question.Options.FirstOrDefault(o => Plain(o.Label) == wanted || Plain(o.Id) == wanted || Plain(o.Meaning ?? string.Empty) == wanted);
        if (exact is not null)
        {
            return exact;
        }

        var starting = question.Options.Where(o => Plain(o.Label).StartsWith(wanted, StringComparison.Ordinal) || Plain(o.Id).StartsWith(wanted, StringComparison.Ordinal)).ToList();
        return starting.Count == 1 ? starting[0] : null;
    }

    private static string Plain(string text) =>
        string.Join(' ', text.ToLowerInvariant().Split([' ', '-', ',', '.', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
