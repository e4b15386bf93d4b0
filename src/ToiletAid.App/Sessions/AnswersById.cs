using ToiletAid.App.Typed;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Sessions;

/// <summary>Reads answers that name their questions, such as behind=cleft lean=forward age=74: in any order, and safe from a question that was not expected.</summary>
internal static class AnswersById
{
    /// <summary>True when the text names a question and is not an answer to the one that is asked: equals of an order are written alike.</summary>
    internal static bool IsMeant(QuestionSet questions, Question asked, string text)
    {
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        return equals > 0 && Named(questions.All, q => q.Id, text[..equals].Trim()).Count > 0
            && !(asked.Kind == QuestionKind.Order && AnswerParser.Parse(asked, text).Value is not null);
    }

    /// <summary>Reads all answers of a line; a fault names the piece that could not be read.</summary>
    internal static (List<(Question Question, Answer Answer)> Given, string Fault) Read(QuestionSet questions, string text)
    {
        var given = new List<(Question, Answer)>();
        foreach (string piece in text.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            int equals = piece.IndexOf('=', StringComparison.Ordinal);
            if (equals <= 0 || equals == piece.Length - 1)
            {
                return ([], $"{Spoken.Quoted(piece, "That")} is not a question, an equals sign and an answer, such as grasp=whole-hand.");
            }

            var named = Named(questions.All, q => q.Id, piece[..equals]);
            if (named.Count != 1)
            {
                return ([], Fault(piece[..equals], named.Select(q => q.Id.Text), "a question"));
            }

            var (answer, fault) = Value(named[0], piece[(equals + 1)..]);
            if (answer is null)
            {
                return ([], fault);
            }

            given.Add((named[0], answer));
        }

        return (given, string.Empty);
    }

    private static (Answer? Answer, string Fault) Value(Question question, string text)
    {
        if (text.Equals("unknown", StringComparison.OrdinalIgnoreCase) || text == "not-known")
        {
            return (new(new AnswerValue.NotKnown(), null), string.Empty);
        }

        string typed = text;
        if (question.Options.Length > 0 && !text.Any(char.IsAsciiDigit))
        {
            // Each item may be shortened, as long as only one option is meant.
            List<string> items = [];
            foreach (string item in text.Split(',', StringSplitOptions.RemoveEmptyEntries))
            {
                var named = item == "none" ? [] : Named(question.Options, o => o.Id, item);
                if (named.Count > 1)
                {
                    return (null, Fault(item, named.Select(o => o.Id), $"an answer to {question.Id}"));
                }

                items.Add(named.Count == 1 ? named[0].Id : item);
            }

            typed = string.Join(',', items);
        }

        var (value, fault) = AnswerParser.Parse(question, typed);
        return value is null ? (null, $"{question.Id}: {fault}") : (new(value, question.Usually), string.Empty);
    }

    /// <summary>What is called so; else all that begin with it or have it as a word of their name.</summary>
    private static List<T> Named<T>(IEnumerable<T> all, Func<T, string> id, string text)
    {
        string wanted = text.ToLowerInvariant();
        var exact = all.Where(a => id(a) == wanted).ToList();
        return exact.Count > 0 ? exact : [.. all.Where(a => id(a).StartsWith(wanted, StringComparison.Ordinal) || id(a).Split('-').Contains(wanted))];
    }

    private static string Fault(string text, IEnumerable<string> candidates, string what) => candidates.Any()
        ? $"{Spoken.Quoted(text, "That")} may be {string.Join(" or ", candidates)}. Type more of it."
        : $"{Spoken.Quoted(text, "That")} is not {what}.";
}
