using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Outcomes;

/// <summary>Which answers and numbers go with more failures than were predicted.</summary>
public sealed class Foresight
{
    /// <summary>Steps into which the range of a number is cut.</summary>
    private const int Steps = 10;

    /// <summary>Fewest people of whom anything is said: a cell with fewer tells of persons and not of people.</summary>
    private readonly double _fewest;

    private readonly QuestionSet _questions;
    private readonly SortedDictionary<string, Cell> _options = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, (NumberSpec? Number, Cell[] Cells)> _numbers = new(StringComparer.Ordinal);
    private readonly Cell _all = new();

    internal Foresight(KnowledgeBase knowledge)
    {
        _questions = knowledge.Questions;
        _fewest = knowledge.Evidence.Value(EvidenceIds.ClinicLeastCell);
    }

    /// <summary>Counts a try.</summary>
    internal void Add(FirstTry tried)
    {
        _all.Add(tried);
        foreach (QuestionId id in tried.Known.Ids.Where(id => !_questions[id].Preference && _questions[id].Kind != QuestionKind.Order))
        {
            var question = _questions[id];
            switch (tried.Known[id]!.Value)
            {
                case AnswerValue.Choice choice:
                    Option(id, choice.Option).Add(tried);
                    break;
                case AnswerValue.Many many:
                    foreach (string option in many.Options)
                    {
                        Option(id, option).Add(tried);
                    }

                    break;
                case AnswerValue.Number number when question.Number is { } spec:
                    Number(id, spec, number.Amount, number.Unit, tried);
                    break;
                case AnswerValue.Parts parts:
                    foreach (var part in question.Parts.Where(p => parts.Amounts.ContainsKey(p.Id)))
                    {
                        Number($"{id}/{part.Id}", part.Number, parts.Amounts[part.Id], parts.Unit, tried);
                    }

                    break;
                default:
                    break;
            }
        }

        for (int c = 0; c < Criteria.Count; c++)
        {
            Cells($"/{Words.Of((Criterion)c)}", null)[Step(tried.Predicted.Criteria[c])].Add(tried);
        }
    }

    /// <summary>What goes with more failures than were predicted, most telling first.</summary>
    /// <param name="most">How many are given at most.</param>
    /// <param name="looks">How many answers and cuts of numbers were looked at: the more, the more of them stand out by chance.</param>
    public IReadOnlyList<Sign> Signs(int most, out int looks)
    {
        var looked = new List<Sign>();

        // Where everything fails more than predicted, no answer foresaw it: what counts is what goes beyond that.
        double more = _all.Expected > 0 ? Math.Max(1, _all.Failed / _all.Expected) : 1;
        foreach (var (key, cell) in _options)
        {
            string[] names = key.Split('=');
            Consider(new(names[0], null, names[1], null, null, cell.Count, cell.Failed, cell.Expected, 1));
        }

        foreach (var (key, (spec, cells)) in _numbers)
        {
            string[] names = key.Split('/');
            for (int cut = 1; cut < Steps; cut++)
            {
                double at = spec is null ? (double)cut / Steps : spec.Low + ((spec.High - spec.Low) * cut / Steps);
                var (below, above) = (Cell.Sum(cells[..cut]), Cell.Sum(cells[cut..]));
                Consider(new(names[0], names.ElementAtOrDefault(1), null, at, null, below.Count, below.Failed, below.Expected, 1));
                Consider(new(names[0], names.ElementAtOrDefault(1), null, null, at, above.Count, above.Failed, above.Expected, 1));
            }
        }

        looks = looked.Count;
        int all = looks;
        return [.. looked.Where(s => s.Failed > s.Expected * more)
            .Select(s => s with { ByChance = Math.Min(1, all * Shares.AtLeast(s.Failed, s.People, Math.Min(1, s.Expected / s.People * more))) })
            .OrderBy(s => s.ByChance).ThenByDescending(s => s.Failed - s.Expected)
            .DistinctBy(s => (s.Question, s.Part)).Take(most)];

        void Consider(Sign sign)
        {
            // An answer that everybody gave tells nobody apart.
            if (sign.People >= _fewest && _all.Count - sign.People >= _fewest)
            {
                looked.Add(sign);
            }
        }
    }

    private Cell Option(string question, string option)
    {
        string key = $"{question}={option}";
        if (!_options.TryGetValue(key, out var cell))
        {
            _options[key] = cell = new();
        }

        return cell;
    }

    private void Number(string key, NumberSpec spec, double amount, string unit, FirstTry tried)
    {
        if (Units.Find(unit) is { } given && Units.Find(spec.Units[0]) is { } first)
        {
            Cells(key, spec)[Step((first.FromSi(given.ToSi(amount)) - spec.Low) / (spec.High - spec.Low))].Add(tried);
        }
    }

    private Cell[] Cells(string key, NumberSpec? spec)
    {
        if (!_numbers.TryGetValue(key, out var found))
        {
            _numbers[key] = found = (spec, [.. Enumerable.Range(0, Steps).Select(_ => new Cell())]);
        }

        return found.Cells;
    }

    private static int Step(double share) => Math.Clamp((int)(share * Steps), 0, Steps - 1);

    private sealed class Cell
    {
        internal long Count { get; private set; }

        internal long Failed { get; private set; }

        internal double Expected { get; private set; }

        internal static Cell Sum(IEnumerable<Cell> cells)
        {
            var sum = new Cell();
            foreach (var cell in cells)
            {
                sum.Count += cell.Count;
                sum.Failed += cell.Failed;
                sum.Expected += cell.Expected;
            }

            return sum;
        }

        internal void Add(FirstTry tried)
        {
            Count++;
            Failed += tried.Failed ? 1 : 0;
            Expected += 1 - tried.Works;
        }
    }
}
