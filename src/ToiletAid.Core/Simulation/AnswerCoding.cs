using System.Collections.Frozen;
using System.Globalization;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Simulation;

/// <summary>Answers as whole numbers, so that people can be told apart quickly: the same number for the same answer to a question, and none for others.</summary>
internal sealed class AnswerCoding
{
    /// <summary>No answer, or one that is not known.</summary>
    internal const int Nothing = -1;

    /// <summary>Ways in which an answer is obtained, and one for none.</summary>
    private const int Ways = 4;

    private readonly FrozenDictionary<string, int> _index;
    private readonly FrozenDictionary<string, int>[] _options;
    private readonly Dictionary<string, int>[] _others;

    internal AnswerCoding(QuestionSet questions)
    {
        Questions = questions;
        _index = questions.All.Select((q, i) => KeyValuePair.Create(q.Id.Text, i)).ToFrozenDictionary(StringComparer.Ordinal);
        _options = [.. questions.All.Select(q => q.Options.Select((o, i) => KeyValuePair.Create(o.Id, i)).ToFrozenDictionary(StringComparer.Ordinal))];
        _others = [.. questions.All.Select(_ => new Dictionary<string, int>(StringComparer.Ordinal))];
    }

    internal QuestionSet Questions { get; }

    internal int Index(QuestionId question) => _index[question.Text];

    /// <summary>The numbers of all answers.</summary>
    internal int[] Of(Answers answers)
    {
        int[] codes = new int[Questions.All.Length];
        for (int i = 0; i < codes.Length; i++)
        {
            codes[i] = Of(i, answers[Questions.All[i].Id]);
        }

        return codes;
    }

    /// <summary>The number of an answer; another one where it was obtained in another way.</summary>
    internal int Of(int question, Answer? answer) => Of(question, answer?.Value) is >= 0 and var code ? (code * Ways) + (int)(answer!.How ?? (HowObtained)(Ways - 1)) : Nothing;

    private int Of(int question, AnswerValue? value)
    {
        switch (value)
        {
            case null or AnswerValue.NotKnown:
                return Nothing;
            case AnswerValue.Choice choice:
                return _options[question][choice.Option];
            case AnswerValue.Many many:
                int bits = 0;
                foreach (string option in many.Options)
                {
                    bits |= 1 << _options[question][option];
                }

                return bits;
            default:
                // Others are numbered as they come; the numbers differ from those of options and are never compared for size.
                var others = _others[question];
                string key = Key(value);
                if (!others.TryGetValue(key, out int code))
                {
                    others[key] = code = _options[question].Count + others.Count;
                }

                return code;
        }
    }

    private static string Key(AnswerValue value) => value switch
    {
        AnswerValue.Number n => string.Create(CultureInfo.InvariantCulture, $"{n.Amount:R} {n.Unit}"),
        AnswerValue.Order o => string.Join('>', o.Groups.Select(g => string.Join('=', g))),
        AnswerValue.Parts p => string.Create(CultureInfo.InvariantCulture, $"{string.Join(' ', p.Amounts.Select(a => string.Create(CultureInfo.InvariantCulture, $"{a.Key} {a.Value:R}")))} {p.Unit}"),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "not a value of its own"),
    };
}
