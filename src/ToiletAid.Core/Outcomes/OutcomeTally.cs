using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Outcomes;

/// <summary>What came out with many people, counted as they come. It takes the same memory for ten people as for a million.</summary>
public sealed class OutcomeTally
{
    private readonly SortedDictionary<string, KindTally> _kinds = new(StringComparer.Ordinal);
    private readonly SortedDictionary<int, long> _days = [];
    private readonly long[,] _levels;
    private readonly ImmutableArray<string> _codes;
    private readonly double _model;
    private readonly double _dry;
    private readonly double _real;

    /// <summary>Begins to count.</summary>
    /// <param name="knowledge">What is known beforehand.</param>
    public OutcomeTally(KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        _codes = [.. knowledge.Trials.Levels.Where(l => !l.NotTried).Select(l => l.Id)];
        _levels = new long[_codes.Length, _codes.Length];
        _model = knowledge.Evidence.Value(EvidenceIds.TrialErrorPrediction);
        _dry = knowledge.Evidence.Value(EvidenceIds.TrialErrorDry);
        _real = knowledge.Evidence.Value(EvidenceIds.TrialErrorReal);
        Foresight = new(knowledge);
    }

    /// <summary>People that were looked at.</summary>
    public long People { get; private set; }

    /// <summary>People with whom anything was tried that counts.</summary>
    public long PeopleWithTries { get; private set; }

    /// <summary>Tries of plans that the catalogue does not hold, which were left out.</summary>
    public long Unknown { get; private set; }

    /// <summary>People whose goal and last level are noted.</summary>
    public long WithGoal { get; private set; }

    /// <summary>With how many of them the goal was reached.</summary>
    public long GoalReached { get; private set; }

    /// <summary>Kinds that were tried, by id.</summary>
    public IReadOnlyCollection<KindTally> Kinds => _kinds.Values;

    /// <summary>All kinds together.</summary>
    public KindTally All
    {
        get
        {
            var all = new KindTally(string.Empty);
            foreach (var kind in _kinds.Values)
            {
                all.Add(kind);
            }

            return all;
        }
    }

    /// <summary>Codes of the levels of help, most independent first.</summary>
    public ImmutableArray<string> Levels => _codes;

    /// <summary>What would have foreseen failures.</summary>
    public Foresight Foresight { get; }

    /// <summary>People who were followed, by days from the first trial to the last visit.</summary>
    public IReadOnlyDictionary<int, long> DaysFollowed => _days;

    /// <summary>People by level of help before and after.</summary>
    /// <param name="before">Place of the level before among <see cref="Levels"/>.</param>
    /// <param name="after">Place of the level after.</param>
    public long At(int before, int after) => _levels[before, after];

    /// <summary>Counts a person.</summary>
    /// <param name="person">What came out.</param>
    public void Add(PersonOutcome person)
    {
        ArgumentNullException.ThrowIfNull(person);
        People++;
        PeopleWithTries += person.Tries.IsEmpty ? 0 : 1;
        Unknown += person.Unknown;
        foreach (var tried in person.Tries)
        {
            if (!_kinds.TryGetValue(tried.Aid, out var kind))
            {
                _kinds[tried.Aid] = kind = new(tried.Aid);
            }

            kind.Add(tried, _model, tried.Decided == RunKind.Real ? _real : _dry);
            Foresight.Add(tried);
        }

        if (person.DaysFollowed is { } days)
        {
            _days[days] = _days.GetValueOrDefault(days) + 1;
        }

        int before = Place(person.Before), after = Place(person.After), goal = Place(person.Goal);
        if (before >= 0 && after >= 0)
        {
            _levels[before, after]++;
        }

        if (after >= 0 && goal >= 0)
        {
            WithGoal++;
            GoalReached += after <= goal ? 1 : 0;
        }
    }

    private int Place(string? code) => code is null ? -1 : _codes.IndexOf(code);
}
