using System.Globalization;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Interview;

/// <summary>What stands in for answers that are missing or not known: one assumption for the middle case, or a draw from how often each answer is expected.</summary>
public static class Assumptions
{
    /// <summary>The answers, with what is assumed where nothing is known. Assumed answers have no way of being obtained.</summary>
    public static Answers Fill(QuestionSet questions, Answers answers) => answers.With(
        questions.All.Where(q => !answers.Knows(q.Id))
            .Select(q => (q.Id.Text, Value: Assumed(q)))
            .Where(a => a.Value is not null)
            .Select(a => KeyValuePair.Create(a.Text, new Answer(a.Value!, null))));

    /// <summary>The answers, with a draw where nothing is known. Each question has a stream of its own, so that one more answer leaves the other draws as they are.</summary>
    /// <param name="questions">The questions.</param>
    /// <param name="answers">What is known.</param>
    /// <param name="seed">Seed of the run.</param>
    /// <param name="draw">Number of the draw.</param>
    public static Answers Draw(QuestionSet questions, Answers answers, ulong seed, int draw) => Drawing(questions, answers, seed)(draw);

    /// <summary>The same for many draws: what is assumed in each of them is put in once, and where nothing is drawn all are one.</summary>
    /// <param name="questions">The questions.</param>
    /// <param name="answers">What is known.</param>
    /// <param name="seed">Seed of the run.</param>
    internal static Func<int, Answers> Drawing(QuestionSet questions, Answers answers, ulong seed)
    {
        var assumed = new List<KeyValuePair<string, Answer>>();
        var open = new List<(int Index, Question Question, Answer[] Choices)>();
        for (int i = 0; i < questions.All.Length; i++)
        {
            var question = questions.All[i];
            if (answers.Knows(question.Id))
            {
                continue;
            }

            if (IsDrawn(question))
            {
                open.Add((i, question, question.Kind == QuestionKind.Many ? [] : [.. question.Options.Select(o => new Answer(new AnswerValue.Choice(o.Id), null))]));
            }
            else if (Assumed(question) is { } value)
            {
                assumed.Add(new(question.Id, new(value, null)));
            }
        }

        var settled = answers.With(assumed);
        return open.Count == 0 ? _ => settled : draw => settled.With(open.Select(o =>
        {
            var random = new RandomDraws(seed, ((ulong)o.Index << 32) | (uint)draw);
            return KeyValuePair.Create(o.Question.Id.Text, o.Choices.Length > 0 ? o.Choices[Chosen(o.Question, ref random)] : new Answer(Drawn(o.Question, ref random), null));
        }));
    }

    /// <summary>True when an answer that is not known is drawn, and not assumed.</summary>
    internal static bool IsDrawn(Question question) => !question.Preference && question.Kind is (QuestionKind.Choice or QuestionKind.Many);

    private static AnswerValue? Assumed(Question question) => question switch
    {
        { Kind: QuestionKind.Many } => new AnswerValue.Many([]),
        { Assume: null } => null,
        { Kind: QuestionKind.Choice } => new AnswerValue.Choice(question.Assume),
        { Number: { } number } => new AnswerValue.Number(double.Parse(question.Assume, CultureInfo.InvariantCulture), number.Units[0]),
        _ => null,
    };

    /// <summary>An answer from how often each is expected, whatever else is true of the person.</summary>
    internal static AnswerValue Drawn(Question question, ref RandomDraws random)
    {
        if (question.Kind == QuestionKind.Many)
        {
            var chosen = new List<string>();
            foreach (var option in question.Options)
            {
                if (random.NextUniform() < option.Share)
                {
                    chosen.Add(option.Id);
                }
            }

            return new AnswerValue.Many([.. chosen]);
        }

        return new AnswerValue.Choice(question.Options[Chosen(question, ref random)].Id);
    }

    /// <summary>Number of the option that is drawn of a question with one choice.</summary>
    private static int Chosen(Question question, ref RandomDraws random)
    {
        double total = 0;
        foreach (var option in question.Options)
        {
            total += option.Share;
        }

        double at = random.NextUniform() * total;
        for (int i = 0; i < question.Options.Length; i++)
        {
            at -= question.Options[i].Share;
            if (at <= 0)
            {
                return i;
            }
        }

        return question.Options.Length - 1;
    }
}
