using System.Collections.Immutable;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Teaching;

/// <summary>Counts over many people which answers put a kind first, rule it out, or put another before it.</summary>
/// <param name="questions">The questions.</param>
/// <param name="people">The people.</param>
public sealed class TeachingTally(QuestionSet questions, IReadOnlyList<SeenPerson> people)
{
    /// <summary>What is worth telling of a kind.</summary>
    /// <param name="kind">Id of the kind.</param>
    public KindTeaching Of(string kind)
    {
        var good = Told(TeachingEvent.First(kind));
        var near = good.IsEmpty ? Told(TeachingEvent.Near(kind)) : [];
        return new(
            kind,
            people.Count(p => p.Place(kind) == 1),
            people.Count(p => p.RuledOut.ContainsKey(kind)),
            good,
            near,
            good.IsEmpty && near.IsEmpty ? Others(kind) : [],
            Told(TeachingEvent.RuledOut(kind)),
            Told(TeachingEvent.Behind(kind)));
    }

    /// <summary>Counts what happened among people with one of the options and among those who answered otherwise.</summary>
    /// <param name="question">Id of the question.</param>
    /// <param name="options">Ids of options.</param>
    /// <param name="happened">What happened.</param>
    public HitCount Count(string question, ImmutableArray<string> options, TeachingEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        var (with, without) = Split(question, options, happened.Among);
        return new(with.Count, with.Count(happened.Is), without.Count, without.Count(happened.Is));
    }

    /// <summary>Those with one of the options, and those who answered otherwise.</summary>
    private (List<SeenPerson> With, List<SeenPerson> Without) Split(string question, ImmutableArray<string> options, Func<SeenPerson, bool> among)
    {
        List<SeenPerson> with = [], without = [];
        foreach (var person in people)
        {
            if (person.Chosen(question) is { } chosen && among(person))
            {
                (chosen.Any(options.Contains) ? with : without).Add(person);
            }
        }

        return (with, without);
    }

    /// <summary>True when a lift is wide, over enough people, and beyond chance.</summary>
    private static bool Stands(HitCount count, TeachingEvent happened) =>
        count.With >= TeachingLimits.LeastPeople && count.StandardErrors >= TeachingLimits.LeastErrors && count.Lift >= happened.LeastLift && count.ShareWith >= happened.LeastShare;

    /// <summary>Options of one question that each stand by themselves are told together.</summary>
    private ImmutableArray<TeachingStatement> Told(TeachingEvent happened) =>
    [
        .. questions.All
            .Where(q => q.Kind is QuestionKind.Choice or QuestionKind.Many)
            .Select(q => (q.Id, Options: q.Options.Select(o => o.Id).Where(o => Stands(Count(q.Id, [o], happened), happened)).ToImmutableArray()))
            .Where(f => !f.Options.IsEmpty)
            .Select(f => (f.Id, f.Options, Count: Count(f.Id, f.Options, happened)))
            .OrderByDescending(f => f.Count.Lift)
            .Take(TeachingLimits.Most)
            .Select(f => Told(f.Id, f.Options, f.Count, happened)),
    ];

    private TeachingStatement Told(string question, ImmutableArray<string> options, HitCount count, TeachingEvent happened)
    {
        string kind = happened.Kind;
        var (with, without) = Split(question, options, _ => true);
        if (happened.SpeaksForIt)
        {
            var itself = More(without, with, p => p.RuledOut.Where(r => r.Key == kind).SelectMany(r => r.Value));
            var others = More(with, without, p => p.RuledOut.Where(r => r.Key != kind).SelectMany(r => r.Value));
            if (itself.By >= TeachingLimits.ItselfIsCause)
            {
                return new(question, options, TeachingCause.Itself, itself.Rule!, count);
            }

            if (others.By >= TeachingLimits.OthersAreCause)
            {
                return new(question, options, TeachingCause.Others, others.Rule!, count);
            }
        }
        else if (happened.RulesOut && More(with, without, p => p.RuledOut.Where(r => r.Key == kind).SelectMany(r => r.Value)).Rule is { } rule)
        {
            return new(question, options, TeachingCause.Itself, rule, count);
        }

        return new(question, options, TeachingCause.Criterion, Words.Of(Moved(with, without, kind, happened.SpeaksForIt)), count);
    }

    /// <summary>What comes first for those who can use a kind.</summary>
    private ImmutableArray<TeachingOther> Others(string kind) =>
    [
        .. people.Where(p => p.Place(kind) > 1)
            .GroupBy(p => p.First!, StringComparer.Ordinal)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Take(TeachingLimits.MostOthers)
            .Select(g => new TeachingOther(g.Key, g.Count(), Words.Of(Behind([.. g], kind)))),
    ];

    /// <summary>The criterion on which a kind lies furthest behind the first.</summary>
    private static Criterion Behind(List<SeenPerson> some, string kind)
    {
        double[] mean = Mean(some, kind);
        return (Criterion)Enumerable.Range(0, mean.Length).MinBy(i => mean[i]);
    }

    /// <summary>The rule that happens most more often among some people than among others, and by how much for one of them.</summary>
    private static (string? Rule, double By) More(List<SeenPerson> some, List<SeenPerson> others, Func<SeenPerson, IEnumerable<string>> rules)
    {
        var less = others.SelectMany(rules).CountBy(r => r).ToDictionary(StringComparer.Ordinal);
        return some.SelectMany(rules).CountBy(r => r)
            .Select(r => (Rule: (string?)r.Key, By: ((double)r.Value / some.Count) - ((double)less.GetValueOrDefault(r.Key) / Math.Max(1, others.Count))))
            .OrderByDescending(r => r.By).ThenBy(r => r.Rule, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    /// <summary>The criterion on which the answer moves a kind most, up or down, against the best other.</summary>
    private static Criterion Moved(List<SeenPerson> with, List<SeenPerson> without, string kind, bool up)
    {
        double[] mine = Mean(with, kind), theirs = Mean(without, kind);
        return (Criterion)Enumerable.Range(0, mine.Length).MaxBy(i => (up ? 1 : -1) * (mine[i] - theirs[i]));
    }

    private static double[] Mean(List<SeenPerson> some, string kind)
    {
        double[] sum = new double[Criteria.Count];
        int count = 0;
        foreach (var ahead in some.Select(p => p.Ahead(kind)).OfType<ImmutableArray<double>>())
        {
            count++;
            for (int i = 0; i < sum.Length; i++)
            {
                sum[i] += ahead[i];
            }
        }

        return [.. sum.Select(s => s / Math.Max(1, count))];
    }
}
