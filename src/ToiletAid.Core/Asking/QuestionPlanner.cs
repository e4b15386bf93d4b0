using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Core.Asking;

/// <summary>Decides what to ask next by what each answer is worth, over people who would give the answers so far, and when it is enough.</summary>
/// <remarks>The kind that comes first for most people and weightings is first, as in the ranking. One instance serves one thread: what was worked out for people is kept and found again. It never changes what is found.</remarks>
public sealed class QuestionPlanner
{
    /// <summary>Sets of hidden traits that are weighed, people drawn, and persons drawn for the reach of each (decisions, for speed: only the order of the
    /// questions and how sure the advice is depend on them).</summary>
    private const int Traits = 2048;
    private const int People = 128;
    private const int ReachDraws = 12;
    private const ulong Seed = 20260101;

    /// <summary>People whose worths are kept; then they start afresh, so that a long run does not fill the memory.</summary>
    private const int MostKept = 4000;

    /// <summary>Best alternatives that are compared besides those that are best for somebody.</summary>
    private const int AlsoCompared = 6;

    private const int MostOfATier = 3;

    private readonly KnowledgeBase _knowledge;
    private readonly Advisor _advisor;
    private readonly AnswerCoding _coding;
    private Worths _worths;
    private readonly Dictionary<Depth, LikelyPeople> _people = [];
    private readonly Dictionary<Int128, Foreseen> _kept = [];
    private (Depth Depth, Answers Known, Outlook Outlook)? _last;

    /// <summary>Makes a planner.</summary>
    /// <param name="knowledge">Everything that is known beforehand.</param>
    public QuestionPlanner(KnowledgeBase knowledge)
    {
        _knowledge = knowledge;
        _advisor = new(knowledge, new());
        _coding = new(knowledge.Questions);
        _worths = new(knowledge, ReachDraws, Seed);
    }

    /// <summary>A planner.</summary>
    public static QuestionPlanner For(KnowledgeBase knowledge) => new(knowledge);

    /// <summary>The questions still to be asked, the next one first; empty when it is enough.</summary>
    /// <param name="depth">What may be used, and how many questions.</param>
    /// <param name="known">Answers as given.</param>
    public ImmutableArray<Question> Open(Depth depth, Answers known) => OutlookFor(depth, known).Next;

    /// <summary>What can be said, and what to ask next.</summary>
    /// <param name="depth">What may be used, and how many questions.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="judgeEarly">True to judge every question even before the opening ones are answered.</param>
    public Outlook OutlookFor(Depth depth, Answers known, bool judgeEarly = false)
    {
        if (_last is { } last && last.Depth == depth && ReferenceEquals(last.Known, known) && !judgeEarly)
        {
            return last.Outlook;
        }

        var outlook = Judge(depth, known, judgeEarly);
        _last = (depth, known, outlook);
        return outlook;
    }

    private Outlook Judge(Depth depth, Answers known, bool judgeEarly)
    {
        if (!_advisor.Stops(known).IsEmpty)
        {
            // A red flag ends the interview: nothing that could be answered would change it.
            return new() { Enough = Enough.RedFlag, Next = [], Values = [] };
        }

        var open = OpenQuestions.Open(_knowledge.Questions, depth, known);
        int left = Budget(depth) - known.Ids.Count();
        if (!judgeEarly && open.Any(q => q.Opening))
        {
            // Nearly everybody is asked these, so that nothing need be worked out before they are answered.
            ImmutableArray<Question> first = [.. open.Where(q => q.Opening), .. open.Where(q => q.Safety && !q.Opening)];
            return new() { Enough = Enough.Not, Next = [.. first, .. open.Except(first).Take(Math.Max(0, left - first.Length))], Values = [] };
        }

        if (!_people.TryGetValue(depth, out var drawn))
        {
            bool[] asked = [.. _knowledge.Questions.All.Select(q => q.Depths.Contains(depth))];
            _people[depth] = drawn = new(_knowledge, _coding, asked, Traits, People, Seed);
        }

        var people = drawn.Given(known);
        return Judge(depth, known, open, left, people, [.. people.Select(Row)]);
    }

    private Outlook Judge(Depth depth, Answers known, ImmutableArray<Question> open, int left, LikelyPerson[] people, Foreseen[] rows)
    {
        int kinds = _knowledge.Catalogue.Aids.Length;
        double[] firsts = Mean(people, i => rows[i].Firsts), gains = Mean(people, i => rows[i].Gains);
        double perfect = people.Select((p, i) => p.Weight * rows[i].Gains.Max()).Sum();
        int first = Largest(firsts);
        int[] choices = [.. rows.Select(r => Largest(r.Gains)).Concat(Enumerable.Range(0, kinds).OrderByDescending(k => gains[k]).Take(AlsoCompared)).Distinct().Order()];
        var split = new AnswerSplit(people, [.. rows.Select(r => r.Gains)], choices);
        double lossLeft = Math.Max(0, perfect - gains[choices[split.First]]);
        var (must, settingUp) = MustBeAsked(known, open, people, [.. rows.Select(r => r.Worths[first])], depth == Depth.Quick ? Severity.Urgent : Severity.Moderate);
        Question[] mayStop = [.. _advisor.StopsWaitFor(known).Select(id => _knowledge.Questions[id]).Where(open.Contains)];
        must.UnionWith(mayStop);
        if (Position(known, open, people) is { } position)
        {
            must.Add(position);
        }

        if (lossLeft > _knowledge.Evidence.Value(EvidenceIds.PlannerLossMuch[depth]))
        {
            left += (int)_knowledge.Evidence.Value(EvidenceIds.PlannerMore[depth]);
        }

        double ahead = _knowledge.Evidence.Value(EvidenceIds.PlannerAhead) * Math.Max(0, left - must.Count);
        var values = open.Select(q =>
        {
            var (gain, decides, changed) = split.Of(_coding.Index(q.Id));
            return new QuestionValue(q, Math.Max(0, gain), changed, Math.Max(0, decides), must.Contains(q));
        }).ToList();

        // What it tells apart helps the questions after it, so that counts the more, the more of them there may be.
        double Score(QuestionValue v) => (v.Gain + (ahead * v.Decides)) / v.Question.Effort;
        ImmutableArray<QuestionValue> ordered = [.. values.OrderByDescending(Score)];
        var enough = lossLeft < _knowledge.Evidence.Value(EvidenceIds.PlannerLossLimit[depth]) || ordered.All(v => Score(v) <= 0) ? Enough.LittleLeft
            : left <= 0 ? Enough.Budget
            : Enough.Not;
        List<Question> next = enough == Enough.Not
            ? [.. ordered.Where(v => Score(v) > 0 && !v.MustBeAsked).Take(Math.Max(0, left - must.Count)).Select(v => v.Question)]
            : [];
        if (depth != Depth.Quick && enough == Enough.LittleLeft && left > must.Count)
        {
            // What is left of the budget goes to the set-up of the plan that is first.
            must.UnionWith(settingUp.Take(left - must.Count));
        }

        // What may stop everything comes before all else.
        ImmutableArray<Question> all = [.. mayStop, .. Merge(next, [.. ordered.Where(v => must.Contains(v.Question)).Select(v => v.Question)], ordered).Except(mayStop)];
        all = all.IsEmpty && !open.IsEmpty ? [.. MayRuleOut(known, ordered)] : all;
        return new()
        {
            Enough = !all.IsEmpty ? Enough.Not : open.IsEmpty ? Enough.AllAsked : enough == Enough.Not ? Enough.Budget : enough,
            Next = all,
            Values = ordered,
            First = firsts[first] > 0 ? _knowledge.Catalogue.Aids[first] : null,
            Tier = Tier(firsts),
            RawShare = firsts[first],
            Share = _knowledge.People.Certainty.Outlook.After(depth).Of(firsts[first]),
            LossLeft = lossLeft,
            Deciding = ordered.Where(v => v.ChangeShare >= _knowledge.Evidence.Value(EvidenceIds.PlannerChangeShare)).MaxBy(v => v.Gain)?.Question,
        };
    }

    /// <summary>Nothing is said to come first that an answer may rule out, also where the ranking puts another plan first than is foreseen here.</summary>
    private IEnumerable<Question> MayRuleOut(Answers known, ImmutableArray<QuestionValue> ordered)
    {
        var waits = _advisor.FirstWaitsFor(known).ToHashSet();
        return ordered.Select(v => v.Question).Where(q => waits.Contains(q.Id));
    }

    /// <summary>Where the person cleans, or else in what position, where too many of the likely people could not use a plan in a position that is assumed.</summary>
    private Question? Position(Answers known, ImmutableArray<Question> open, LikelyPerson[] people)
    {
        var asked = open.FirstOrDefault(q => q.Id == QuestionIds.Place.Text) ?? open.FirstOrDefault(q => q.Id == QuestionIds.Posture.Text);
        if (asked is null)
        {
            return null;
        }

        var assumed = PlanSpace.Postures(known);
        double others = people.Sum(p => assumed.All(PlanSpace.Postures(p.Answers).Contains) ? 0 : p.Weight);
        return others >= _knowledge.Evidence.Value(EvidenceIds.PlannerPositionShare) ? asked : null;
    }

    /// <summary>The mean of what people have, by their weights.</summary>
    private static double[] Mean(LikelyPerson[] people, Func<int, double[]> row)
    {
        double[] means = new double[row(0).Length];
        for (int i = 0; i < people.Length; i++)
        {
            double[] values = row(i);
            for (int k = 0; k < means.Length; k++)
            {
                means[k] += people[i].Weight * values[k];
            }
        }

        return means;
    }

    /// <summary>The next questions in the order of their value, with those that must be asked at the end at the latest.</summary>
    private static IEnumerable<Question> Merge(List<Question> next, List<Question> must, ImmutableArray<QuestionValue> ordered) => next.Count == 0
        ? must
        : ordered.Select(v => v.Question).Where(q => next.Contains(q) || must.Contains(q));

    /// <summary>Questions of safety on which a rule about the plan that is first waits: the best of the kind for most of those who would give these answers.</summary>
    private (HashSet<Question> Safety, IEnumerable<Question> SettingUp) MustBeAsked(Answers known, ImmutableArray<Question> open, LikelyPerson[] people, (double Worth, int Alternative)[] best, Severity least)
    {
        var needed = new HashSet<Question>();
        IEnumerable<Question> settingUp = [];
        var mostly = Enumerable.Range(0, people.Length).Where(i => best[i].Worth > 0).GroupBy(i => best[i].Alternative).MaxBy(g => g.Sum(i => people[i].Weight * best[i].Worth));
        if (mostly is not null)
        {
            var (plan, demands) = _worths.Chosen(people[mostly.MaxBy(i => best[i].Worth)], mostly.Key);
            settingUp = open.Where(q => SetsUp(q, plan));
            var context = new RuleContext(_knowledge, known, plan, demands);
            needed.UnionWith(_worths.Hazards.Cautions.Where(r => r.Rule.Severity <= least).Concat(_worths.Hazards.RulesOut.Where(r => !r.DependsOnHand))
                .SelectMany(rule => rule.Check(context).Needs).Select(id => _knowledge.Questions[id]).Where(q => q.Safety && open.Contains(q)));
            if (demands.Need is { Allowed: true } && demands.ReachShare < _knowledge.Evidence.Value(EvidenceIds.PlannerBuildShare))
            {
                // Likely people share one build until it is known, so that what it is worth to know it does not show.
                needed.UnionWith(open.Where(q => q.Id == QuestionIds.Mass.Text));
            }
        }

        return (needed, settingUp);
    }

    private static bool SetsUp(Question question, Plan plan) => question.SetsUp switch
    {
        "paper" => plan.Methods.Any(m => m.Paper is not null && m.Method != MethodKind.Helper),
        "way" => plan.Approach is not null,
        "reach" => plan.Methods.Any(m => m.Reach != ReachKind.None),
        "supplies" => plan.Methods.Any(m => m.Paper is not null || m.Water is { Plumbed: false }),
        _ => false,
    };

    /// <summary>The kinds that are first for most people and weightings, until they hold nearly all of them, beginning with the one that is best on the whole.</summary>
    private ImmutableArray<Aid> Tier(double[] firsts)
    {
        var kinds = ImmutableArray.CreateBuilder<Aid>();
        double sum = 0, enough = _knowledge.Evidence.Value(EvidenceIds.PlannerTierShare);
        foreach (int kind in Enumerable.Range(0, firsts.Length).OrderByDescending(k => firsts[k]))
        {
            if (kinds.Count == MostOfATier || sum >= enough || firsts[kind] == 0)
            {
                break;
            }

            kinds.Add(_knowledge.Catalogue.Aids[kind]);
            sum += firsts[kind];
        }

        return kinds.ToImmutable();
    }

    private int Budget(Depth depth) => (int)_knowledge.Evidence.Value(EvidenceIds.PlannerBudget[depth]);

    private Foreseen Row(LikelyPerson person)
    {
        if (!_kept.TryGetValue(person.Key, out var row))
        {
            if (_kept.Count >= MostKept)
            {
                _kept.Clear();
                _worths = new(_knowledge, ReachDraws, Seed);
            }

            int kinds = _knowledge.Catalogue.Aids.Length;
            _kept[person.Key] = row = new(new (double Worth, int Alternative)[kinds], new double[kinds], new double[kinds]);
            _worths.Of(person, row.Worths, row.Firsts);
            double allowed = _knowledge.Evidence.Value(EvidenceIds.PlannerAllowedCounts);
            for (int k = 0; k < kinds; k++)
            {
                row.Gains[k] = row.Firsts[k] + (row.Worths[k].Worth > 0 ? allowed : 0);
            }
        }

        return row;
    }

    private static int Largest(double[] values)
    {
        int best = 0;
        for (int k = 1; k < values.Length; k++)
        {
            best = values[k] > values[best] ? k : best;
        }

        return best;
    }

    /// <summary>What was worked out for somebody.</summary>
    /// <param name="Worths">What the best posture and way of each kind is worth, and which it is.</param>
    /// <param name="Firsts">In what share of the weightings and cases each kind comes first.</param>
    /// <param name="Gains">The same, and more for every kind that no rule forbids: what an answer is to find out.</param>
    private sealed record Foreseen((double Worth, int Alternative)[] Worths, double[] Firsts, double[] Gains);
}
