using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Simulation;

/// <summary>Makes plausible people: one hidden value for each trait, answers that follow the traits (a Gaussian copula), shares as the questions expect them.</summary>
/// <remarks>Person n is the same whatever the number of people, so that a larger set begins with the smaller one.</remarks>
public sealed class PeopleSimulator
{
    /// <summary>Most people; codes of two letters, a hyphen and five digits can tell six times as many apart.</summary>
    public const long Most = 10_000_000;

    private const int DigitsHold = 100_000;

    private readonly KnowledgeBase _knowledge;
    private readonly PeopleModel _model;
    private readonly FrozenDictionary<string, AnswerModel> _models;
    private readonly MeasuredAnswers _measured;
    private readonly FrozenDictionary<string, (string Id, double Share)[]> _usual;
    private readonly FrozenDictionary<SharesWhen, (string Id, double Share)[]> _given;

    /// <summary>Makes a simulator.</summary>
    /// <param name="knowledge">Questions and tables.</param>
    /// <param name="model">What people are like.</param>
    /// <exception cref="ArgumentException">The model names a question, an option or a trait that is not there.</exception>
    public PeopleSimulator(KnowledgeBase knowledge, PeopleModel model)
    {
        _knowledge = knowledge;
        _model = model;
        _models = model.Answers.ToFrozenDictionary(a => a.Question.Text, StringComparer.Ordinal);
        _measured = new(knowledge, model);
        var choices = knowledge.Questions.All.Where(q => q.Kind == QuestionKind.Choice).Select(q => (Question: q, Model: _models.GetValueOrDefault(q.Id))).ToList();
        _usual = choices.ToFrozenDictionary(c => c.Question.Id.Text, c => Ordered(c.Question, c.Model, null), StringComparer.Ordinal);
        _given = choices.SelectMany(c => (c.Model?.Given ?? []).Select(g => (c.Question, c.Model, Given: g)))
            .ToFrozenDictionary(c => c.Given, c => Ordered(c.Question, c.Model, c.Given));
        foreach (var answer in model.Answers)
        {
            var question = knowledge.Questions[answer.Question];
            bool sameOptions = answer.MildFirst.IsEmpty || answer.MildFirst.Order(StringComparer.Ordinal).SequenceEqual(question.Options.Select(o => o.Id).Order(StringComparer.Ordinal));
            if (!sameOptions || answer.Loads.Keys.Any(t => !Traits.Names.Contains(t)) || answer.Given.SelectMany(g => g.Shares.Keys).Any(o => question.FindOption(o) is null))
            {
                throw new ArgumentException($"the model of {answer.Question} does not fit the questions", nameof(model));
            }
        }
    }

    /// <summary>A person with one session.</summary>
    /// <param name="seed">Seed of the run.</param>
    /// <param name="number">Number of the person, from 0.</param>
    /// <param name="depth">Which questions are answered.</param>
    /// <param name="date">Day of the session.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is out of range.</exception>
    public Profile Make(ulong seed, long number, Depth depth, DateOnly date)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(number, Most);
        var traits = new Traits(seed, number);
        var answers = Answers.None.Apart();
        for (int i = 0; i < _knowledge.Questions.All.Length; i++)
        {
            var question = _knowledge.Questions.All[i];
            if (question.Depths.Contains(depth) && OpenQuestions.IsRelevant(question, answers))
            {
                var draws = traits.Stream(i);
                var value = draws.NextUniform() < _model.UnknownShare && !question.Safety ? null : Value(question, answers, traits, ref draws);
                answers.Put(question.Id, value is null ? new(new AnswerValue.NotKnown(), null) : new(value, question.Usually));
            }
        }

        return new(Code(number), [new(date, depth, answers)]);
    }

    private static string Code(long number)
    {
        long letters = number / DigitsHold;
        return string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + (letters / 26))}{(char)('A' + (letters % 26))}-{number % DigitsHold:D5}");
    }

    private AnswerValue? Value(Question question, Answers answers, Traits traits, ref RandomDraws draws) => question.Kind switch
    {
        QuestionKind.Choice => Choice(question, answers, traits, ref draws),
        QuestionKind.Many => Many(question, answers, traits, ref draws),
        QuestionKind.Order => Order(question, ref draws),
        _ => _measured.Of(question, answers, traits, ref draws),
    };

    /// <summary>Somebody with these traits who gave the known answers: the other questions are answered as the model says.</summary>
    /// <param name="known">Answers as given.</param>
    /// <param name="traits">What is true of the person behind the answers.</param>
    /// <param name="asked">Questions that may be answered.</param>
    internal Answers Complete(Answers known, Traits traits, ReadOnlySpan<bool> asked)
    {
        var answers = known.Apart();
        for (int i = 0; i < _knowledge.Questions.All.Length; i++)
        {
            var question = _knowledge.Questions.All[i];
            if (!asked[i] || known.Knows(question.Id) || !OpenQuestions.IsRelevant(question, answers))
            {
                continue;
            }

            var draws = traits.Stream(i);
            draws.NextUniform();
            if (known[question.Id] is not null)
            {
                // Asked for and not known: taken as the ranking takes it, because no other answer will settle it.
                if (Assumptions.IsDrawn(question))
                {
                    answers.Put(question.Id, new(Assumptions.Drawn(question, ref draws), null));
                }

                continue;
            }

            answers.Put(question.Id, Value(question, answers, traits, ref draws) is { } value ? new(_measured.Rounded(question, value), question.Usually) : null);
        }

        return answers;
    }

    /// <summary>How likely somebody with these traits gives an answer, up to a factor that is the same for all traits.</summary>
    /// <param name="question">The question.</param>
    /// <param name="value">The answer.</param>
    /// <param name="answers">What else is answered.</param>
    /// <param name="traits">What is true of the person behind the answers.</param>
    internal double Likelihood(Question question, AnswerValue value, Answers answers, Traits traits)
    {
        var model = _models.GetValueOrDefault(question.Id);
        switch (value)
        {
            case AnswerValue.Choice choice:
                var (mean, spread) = traits.Deviation(model);
                var (from, to) = Range(question, model, answers, choice.Option);
                return Below(to, mean, spread) - Below(from, mean, spread);
            case AnswerValue.Many many:
                (mean, spread) = traits.Deviation(model);
                double likelihood = 1;
                foreach (var option in question.Options)
                {
                    double without = Below(StandardNormal.Quantile(1 - option.Share), mean, spread);
                    likelihood *= many.Options.Contains(option.Id) ? 1 - without : without;
                }

                return likelihood;
            default:
                return _measured.Likelihood(question, value, answers, traits);
        }
    }

    private static double Below(double deviation, double mean, double spread) =>
        double.IsPositiveInfinity(deviation) ? 1 : double.IsNegativeInfinity(deviation) ? 0
        : spread > 0 ? StandardNormal.Probability((deviation - mean) / spread) : deviation > mean ? 1 : 0;

    /// <summary>Between which standard normal deviations an option is chosen.</summary>
    private (double From, double To) Range(Question question, AnswerModel? model, Answers answers, string chosen)
    {
        var options = Shares(question, model, answers);
        double total = options.Sum(o => o.Share), from = 0;
        foreach (var (id, share) in options)
        {
            if (id == chosen)
            {
                return (Quantile(from / total), Quantile((from + share) / total));
            }

            from += share;
        }

        return (double.NegativeInfinity, double.PositiveInfinity);

        static double Quantile(double share) => share <= 0 ? double.NegativeInfinity : share >= 1 - 1e-12 ? double.PositiveInfinity : StandardNormal.Quantile(share);
    }

    private (string Id, double Share)[] Shares(Question question, AnswerModel? model, Answers answers)
    {
        var given = model?.Given.FirstOrDefault(g => answers.Choice(g.Question) is { } earlier && g.Is.Contains(earlier));
        return given is null ? _usual[question.Id] : _given[given];
    }

    private static (string Id, double Share)[] Ordered(Question question, AnswerModel? model, SharesWhen? given)
    {
        var order = model is { MildFirst.IsEmpty: false } ? model.MildFirst.Select(id => question.FindOption(id)!) : question.Options;
        return [.. order.Select(o => (o.Id, given is null ? o.Share : given.Shares.GetValueOrDefault(o.Id)))];
    }

    private AnswerValue.Choice Choice(Question question, Answers answers, Traits traits, ref RandomDraws draws)
    {
        var model = _models.GetValueOrDefault(question.Id);
        var options = Shares(question, model, answers);
        double at = traits.Place(model, ref draws) * options.Sum(o => o.Share);
        foreach (var (id, share) in options)
        {
            at -= share;
            if (at < 0)
            {
                return new(id);
            }
        }

        return new(options.Last(o => o.Share > 0).Id);
    }

    private AnswerValue.Many Many(Question question, Answers answers, Traits traits, ref RandomDraws draws)
    {
        var model = _models.GetValueOrDefault(question.Id);
        var chosen = ImmutableArray.CreateBuilder<string>();
        foreach (var option in question.Options)
        {
            bool drawn = traits.Place(model, ref draws) > 1 - option.Share;
            bool possible = option.Id != OptionIds.AlsoMenstrualBlood.Text || (answers.Choice(QuestionIds.Sex) == Sex.Female && _measured.Years(traits) < _model.MonthlyBleedingEnds);
            if (drawn && possible)
            {
                chosen.Add(option.Id);
            }
        }

        return new(chosen.ToImmutable());
    }

    /// <summary>The first few priorities of a person, any of them with the same chance; null where none is named.</summary>
    private AnswerValue.Order? Order(Question question, ref RandomDraws draws)
    {
        double at = draws.NextUniform();
        int length = 0;
        while (length < _model.OrderLengths.Length - 1 && (at -= _model.OrderLengths[length]) >= 0)
        {
            length++;
        }

        var left = question.Options.Select(o => o.Id).ToList();
        var groups = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        while (groups.Count < length && left.Count > 0)
        {
            int next = (int)(draws.NextUniform() * left.Count);
            groups.Add([left[next]]);
            left.RemoveAt(next);
        }

        return length == 0 ? null : new(groups.ToImmutable());
    }
}
