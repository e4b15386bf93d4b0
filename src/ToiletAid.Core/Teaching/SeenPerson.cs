using System.Collections.Frozen;
using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Teaching;

/// <summary>What is kept of one person's advice: enough to count which answers go with which place, and why.</summary>
public sealed class SeenPerson
{
    private readonly FrozenDictionary<string, ImmutableArray<string>> _chosen;
    private readonly FrozenDictionary<string, int> _places;
    private readonly FrozenDictionary<string, ImmutableArray<double>> _ahead;
    private readonly FrozenDictionary<string, ImmutableArray<string>> _ruledOut;

    /// <summary>Keeps it.</summary>
    /// <param name="questions">The questions.</param>
    /// <param name="answers">The person's answers.</param>
    /// <param name="advice">The advice on them, without a red flag.</param>
    public SeenPerson(QuestionSet questions, Answers answers, Advice advice)
    {
        ArgumentNullException.ThrowIfNull(questions);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(advice);
        _chosen = questions.All
            .Where(q => q.Kind is QuestionKind.Choice or QuestionKind.Many && answers.Knows(q.Id))
            .ToFrozenDictionary(q => q.Id.Text, q => answers.Many(q.Id) ?? (answers.Choice(q.Id) is { } one ? [one] : []), StringComparer.Ordinal);
        First = advice.Ranked.FirstOrDefault()?.Plan.Aid.KindId;
        _places = advice.Ranked.ToFrozenDictionary(r => r.Plan.Aid.KindId, r => r.Rank, StringComparer.Ordinal);
        _ahead = advice.Ranked.Length < 2 ? FrozenDictionary<string, ImmutableArray<double>>.Empty : advice.Ranked.ToFrozenDictionary(
            r => r.Plan.Aid.KindId, r => Ahead(r, advice.Ranked[r.Rank == 1 ? 1 : 0], advice.Weights), StringComparer.Ordinal);
        _ruledOut = advice.RuledOut.ToFrozenDictionary(r => r.Aid.Id, r => r.Reasons.Select(f => f.Rule.Id).Distinct(StringComparer.Ordinal).ToImmutableArray(), StringComparer.Ordinal);
    }

    /// <summary>The kind that comes first; null where nothing can be offered.</summary>
    public string? First { get; }

    /// <summary>Kinds that are ruled out, each with the rules that do it.</summary>
    public IReadOnlyDictionary<string, ImmutableArray<string>> RuledOut => _ruledOut;

    /// <summary>True where nothing can be offered.</summary>
    public bool IsOfferedNothing => _places.Count == 0;

    /// <summary>Options chosen for a question; null where it was not answered.</summary>
    /// <param name="question">Id of the question.</param>
    public ImmutableArray<string>? Chosen(string question) => _chosen.TryGetValue(question, out var chosen) ? chosen : null;

    /// <summary>Place of a kind, from 1; null where it is not offered.</summary>
    /// <param name="kind">Id of the kind.</param>
    public int? Place(string kind) => _places.TryGetValue(kind, out int place) ? place : null;

    /// <summary>How far a kind lies ahead of the best other one on each criterion, weighted, below 0 for behind; null where there is nothing to compare.</summary>
    /// <param name="kind">Id of the kind.</param>
    public ImmutableArray<double>? Ahead(string kind) => _ahead.TryGetValue(kind, out var ahead) ? ahead : null;

    private static ImmutableArray<double> Ahead(RankedPlan plan, RankedPlan other, ImmutableArray<double> weights) =>
        [.. weights.Select((w, i) => w * (plan.Criteria[i] - other.Criteria[i]))];
}
