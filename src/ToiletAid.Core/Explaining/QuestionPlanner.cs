using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Ranking;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Explaining;

/// <summary>Which questions are still worth asking: those whose answer may change the first place, a caution or the set-up. Safety is always asked.</summary>
/// <param name="knowledge">Questions and limits.</param>
/// <param name="advisor">Ranks.</param>
public sealed class QuestionPlanner(KnowledgeBase knowledge, Advisor advisor)
{
    /// <summary>Best plans whose rules are worth a question: as many as a shortlist gives when nothing else is asked for (decision).</summary>
    private const int PlansLookedAt = 3;

    /// <summary>Weight of an option that nobody is expected to choose: next to nothing, so that questions without expected shares are still judged.</summary>
    private const double LeastWeight = 1e-6;

    /// <summary>Shares of weaker hands at which strength is tried, each counting the same: two weak hands and two strong ones, and not the middle one that is there
    /// already (decision). Only which question comes next depends on it.</summary>
    private static readonly ImmutableArray<double> Strengths = [0.1, 0.3, 0.7, 0.9];
    private static readonly ImmutableArray<string> AboutLength = ["stature", "mass", "joints"];
    private static readonly ImmutableArray<string> AboutStrength = ["grip", "pinch", "age"];

    /// <summary>A planner with the settings meant for it.</summary>
    public static QuestionPlanner For(KnowledgeBase knowledge) => new(knowledge, new(knowledge, AdviceSettings.WhileAsking));

    /// <summary>The questions still to be asked, the next one first; empty when none matters any more, or a red flag ends the interview.</summary>
    /// <param name="depth">How much may be asked.</param>
    /// <param name="known">Answers as given.</param>
    public ImmutableArray<Question> Open(Depth depth, Answers known) => [.. Plan(depth, known).Select(v => v.Question)];

    /// <summary>The same with what each may bring.</summary>
    /// <param name="depth">How much may be asked.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="judgeEarly">True to judge every question even before the opening ones are answered.</param>
    public ImmutableArray<QuestionValue> Plan(Depth depth, Answers known, bool judgeEarly = false)
    {
        if (!advisor.Stops(known).IsEmpty)
        {
            // A red flag ends the interview: nothing that could be answered would change it.
            return [];
        }

        var open = OpenQuestions.Open(knowledge.Questions, depth, known);
        if (!judgeEarly && open.Any(q => q.Opening))
        {
            // Without these nothing sensible can be worked out, so they come first and the rest is not judged yet.
            var relevant = open.Select(q => new QuestionValue(q, 1, 0, [], false)).ToList();
            return [.. relevant.Where(v => v.Question.Opening), .. relevant.Where(v => !v.Question.Opening)];
        }

        var offered = new OfferedPlans(knowledge, advisor, known);
        double least = knowledge.Evidence.Value("planner.change-share");
        var worth = open.Select(offered.Value).Where(v => v.Question.Safety || v.Question.Opening || v.ChangeShare >= least || !v.Rules.IsEmpty || v.SetsUp).ToList();
        return [.. InOrder(worth, known)];
    }

    /// <summary>A topic that was begun is finished first, then the one that brings most; inside a topic the questions keep their order.</summary>
    private IEnumerable<QuestionValue> InOrder(List<QuestionValue> worth, Answers known)
    {
        var begun = knowledge.Questions.All.Where(q => known[q.Id] is not null).Select(q => q.Topic).ToHashSet(StringComparer.Ordinal);
        return worth.GroupBy(v => v.Question.Topic, StringComparer.Ordinal)
            .OrderByDescending(t => t.Any(v => v.Question.Opening))
            .ThenByDescending(t => begun.Contains(t.Key))
            .ThenByDescending(t => t.Any(v => v.Question.Safety))
            .ThenByDescending(t => t.Max(v => v.Gain))
            .SelectMany(t => t);
    }

    /// <summary>The plans as they stand, and what becomes of them for each answer.</summary>
    private sealed class OfferedPlans
    {
        private readonly KnowledgeBase _knowledge;
        private readonly Appraiser _appraiser;
        private readonly WeightSet _weights;
        private readonly List<Offer> _offers;
        private readonly Answers _filled;
        private readonly double[] _now;
        private readonly int _first;
        private readonly int _draws;
        private readonly Dictionary<string, List<string>> _rules = new(StringComparer.Ordinal);

        internal OfferedPlans(KnowledgeBase knowledge, Advisor advisor, Answers known)
        {
            _knowledge = knowledge;
            _draws = advisor.ValueDraws;
            (_appraiser, var sample, _offers, _) = advisor.Screened(known);
            _weights = sample.Set;
            _filled = Assumptions.Fill(knowledge.Questions, known);
            _now = Values(_appraiser.Middle, _filled);
            _first = Best(_now);
            foreach (int i in Enumerable.Range(0, _offers.Count).OrderByDescending(i => _now[i]).Take(PlansLookedAt))
            {
                NoteRules(_offers[i], Cautions.All);
            }

            // What is assumed of two answers at once may keep out the plan that would be first; either answer alone would not show it.
            foreach (var offer in _offers.Where((o, i) => _now[i] == 0 && _first >= 0 && IfUsable(o) > _now[_first]))
            {
                NoteRules(offer, []);
            }
        }

        internal QuestionValue Value(Question question)
        {
            var (share, gain) = Weigh(Cases(question));
            return new(question, share, gain, [.. _rules.GetValueOrDefault(question.Id) ?? []], SetsUp(question));
        }

        /// <summary>Rules about a plan that wait for an answer; notes are not worth a question.</summary>
        private void NoteRules(Offer offer, ImmutableArray<RuleCheck> cautions)
        {
            var context = new RuleContext(_knowledge, _appraiser.Known, offer.Plan, offer.Demands);
            foreach (var rule in offer.Unclear.Concat(cautions).Where(r => _knowledge.Rules[r.Id].Severity < Severity.Note))
            {
                foreach (string question in rule.Check(context).Needs)
                {
                    if (!_rules.TryGetValue(question, out var list))
                    {
                        _rules[question] = list = [];
                    }

                    if (!list.Contains(rule.Id))
                    {
                        list.Add(rule.Id);
                    }
                }
            }
        }

        private double IfUsable(Offer offer) => ExpectedValues.WeightedSum(_appraiser.Values(offer.Plan, _appraiser.Middle), _weights.Centroid);

        private bool SetsUp(Question question) => _first >= 0 && question.SetsUp switch
        {
            "paper" => _offers[_first].Plan.Methods.Any(m => m.Paper is not null && m.Method != MethodKind.Helper),
            "way" => _offers[_first].Plan.Approach is not null,
            "supplies" => _offers[_first].Plan.Methods.Any(m => m.Paper is not null || m.Water is { Plumbed: false }),
            _ => false,
        };

        /// <summary>How often another plan would be first, and what knowing would gain.</summary>
        private (double Share, double Gain) Weigh(IEnumerable<(double Weight, double[] Values)> cases)
        {
            double changed = 0, gain = 0, total = 0;
            foreach (var (weight, values) in cases)
            {
                total += weight;
                int best = Best(values);
                if (best != _first && _first >= 0)
                {
                    changed += weight;
                    gain += weight * (values[best] - values[_first]);
                }
            }

            return total > 0 ? (changed / total, gain / total) : (0, 0);
        }

        private IEnumerable<(double Weight, double[] Values)> Cases(Question question) => question.Kind switch
        {
            QuestionKind.Choice => question.Options.Select(o => (Math.Max(o.Share, LeastWeight), With(question, new AnswerValue.Choice(o.Id)))),
            QuestionKind.Many => question.Options.Select(o => (Math.Max(o.Share, LeastWeight), With(question, new AnswerValue.Many([o.Id])))).Append((1.0, _now)),
            _ when AboutStrength.Contains(question.Id) => Strengths.Select(u => (1.0, Values(_appraiser.DrawPerson(_filled, u), _filled))),
            _ when AboutLength.Contains(question.Id) => Lengths(),
            QuestionKind.Order => Orders(),
            _ => [],
        };

        /// <summary>Each criterion put first by itself: an order of priorities may be anything, and this is its range.</summary>
        private IEnumerable<(double Weight, double[] Values)> Orders()
        {
            double[][] values = [.. _offers.Select(o => _appraiser.Values(o.Plan, _appraiser.Middle))];
            for (int first = 0; first < Criteria.Count; first++)
            {
                var set = new WeightSet(PriorityOrder.Of(Criteria.Count, [[first]]));
                yield return (1, [.. values.Select(v => ExpectedValues.WeightedSum(v, set.Centroid))]);
            }
        }

        private IEnumerable<(double Weight, double[] Values)> Lengths()
        {
            for (int draw = 0; draw < _draws; draw++)
            {
                yield return (1, Values(_appraiser.Middle with { Draw = draw }, _filled));
            }
        }

        private double[] With(Question question, AnswerValue value)
        {
            var filled = _filled.With(question.Id, new(value, null));
            return Values(_appraiser.DrawPerson(filled, 0.5), filled);
        }

        private double[] Values(DrawnPerson person, Answers filled)
        {
            double[] values = new double[_offers.Count];
            for (int i = 0; i < values.Length; i++)
            {
                values[i] = PlanRanking.IsUsable(_knowledge, _offers[i], filled)
                    ? ExpectedValues.WeightedSum(_appraiser.Values(_offers[i].Plan, person), _weights.Centroid)
                    : 0;
            }

            return values;
        }

        private static int Best(double[] values)
        {
            int best = values.Length == 0 ? -1 : 0;
            for (int i = 1; i < values.Length; i++)
            {
                best = values[i] > values[best] ? i : best;
            }

            return best;
        }
    }
}
