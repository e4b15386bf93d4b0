using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Statistics;

namespace ToiletAid.Core.Outcomes;

/// <summary>A clinic's own coefficients from its own trials.</summary>
/// <remarks>Two levels: what all kinds share in this clinic, and each kind by itself. Kinds with few people are put together before anything is fitted, so
/// that no cell tells of a person. How often tries fail is fitted by <see cref="FailureShifts"/>, what was seen of a criterion by <see cref="MeanShifts"/>.</remarks>
public sealed class ClinicFit
{
    /// <summary>How likely an interval of a coefficient holds it.</summary>
    public const double Probability = 0.8;

    /// <summary>Criteria of which a try that went well can say that they were better or worse than predicted. Harm to the skin is seen and its absence is not, and what was
    /// remembered on the day it was shown says little of the days after.</summary>
    private static readonly ImmutableArray<Criterion> Fitted = [Criterion.Handling, Criterion.Cleaning];

    private readonly EvidenceTable _evidence;
    private readonly int _leastCell;
    private readonly double _surest;

    /// <summary>Makes ready.</summary>
    /// <param name="evidence">Limits, and what is believed beforehand.</param>
    public ClinicFit(EvidenceTable evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        _evidence = evidence;
        _leastCell = (int)evidence.Value(EvidenceIds.ClinicLeastCell);
        LeastPeople = (int)evidence.Value(EvidenceIds.ClinicLeastPeople);
        _surest = evidence.Value(EvidenceIds.ClinicSurest);
    }

    /// <summary>Fewest people that coefficients may rest on.</summary>
    public int LeastPeople { get; }

    /// <summary>The coefficients; null while they would rest on too few people.</summary>
    /// <param name="tally">What came out.</param>
    /// <param name="data">Which built-in data predicted.</param>
    public ClinicCoefficients? Fit(OutcomeTally tally, string data)
    {
        ArgumentNullException.ThrowIfNull(tally);
        if (tally.PeopleWithTries < LeastPeople)
        {
            return null;
        }

        var (own, others) = Merge(tally.Kinds, k => k.People);
        var fitted = FailureShifts.Fit(
            [.. own.Append(others).Select(k => k.ToFit(_surest))],
            SpreadPrior.Of(_evidence[EvidenceIds.ClinicCommonLogOdds], _evidence[EvidenceIds.ClinicKindsLogOdds]));
        var criteria = Fitted.ToDictionary(c => c, c => Shifts(tally.Kinds, c));
        var all = tally.All;
        return new()
        {
            People = (int)tally.PeopleWithTries,
            Tries = (int)all.People,
            Data = data,
            Kinds = [.. own.Append(others).Select((kind, i) => new KindCoefficients
            {
                Aid = i < own.Count ? kind.Aid : null,
                People = (int)kind.People,
                Failed = (int)kind.Failed,
                Expected = Rounded(kind.ExpectedToFail),
                Factor = Factor(kind.People > 0 ? kind : all, fitted.Groups[i].Mean),
                Range = Range(kind.People > 0 ? kind : all, fitted.Groups[i]),
                Shifts = [.. Fitted.Select(c => criteria[c](i < own.Count ? kind.Aid : null)).OfType<CriterionShift>()],
            })],
        };
    }

    /// <summary>How often a kind works in this clinic, over how often it was predicted to.</summary>
    private double Factor(KindTally kind, double shift)
    {
        double predicted = 0, here = 0;
        foreach (var tries in kind.ToFit(_surest))
        {
            predicted += tries.Count / (1 + Math.Exp(tries.LogOdds));
            here += tries.Count / (1 + Math.Exp(tries.LogOdds + shift));
        }

        var limits = _evidence[EvidenceIds.ClinicFactor];
        return Rounded(Math.Clamp(here / predicted, limits.Low, limits.High));
    }

    private Interval Range(KindTally kind, Shift shift)
    {
        var interval = shift.Interval(Probability);
        return new(Factor(kind, interval.High), Factor(kind, interval.Low));
    }

    /// <summary>What is added to a criterion, by kind; null is every other kind.</summary>
    private Func<string?, CriterionShift?> Shifts(IReadOnlyCollection<KindTally> kinds, Criterion criterion)
    {
        var (own, others) = Merge(kinds, k => k.ByCriterion[(int)criterion].Count);
        KindTally[] seen = [.. own.Append(others).Where(k => k.ByCriterion[(int)criterion].Count >= _leastCell)];
        var fitted = MeanShifts.Fit(
            [.. seen.Select(k => (k.ByCriterion[(int)criterion].Shift, k.ByCriterion[(int)criterion].Precision))],
            SpreadPrior.Of(_evidence[EvidenceIds.ClinicCommonCriterion], _evidence[EvidenceIds.ClinicKindsCriterion]));
        return aid =>
        {
            int group = Array.FindIndex(seen, k => k.Aid == aid);
            if (group < 0)
            {
                group = Array.IndexOf(seen, others);
            }

            var cell = group < 0 ? new() : seen[group].ByCriterion[(int)criterion];
            return seen.Length == 0 ? null : Of(criterion, cell, group < 0 ? fitted.Unseen : fitted.Groups[group]);
        };
    }

    private CriterionShift Of(Criterion criterion, CriterionTally cell, Shift shift)
    {
        var limits = _evidence[EvidenceIds.ClinicShift];
        var interval = shift.Interval(Probability);
        return new(criterion, (int)cell.Count, Rounded(cell.Predicted), Rounded(cell.Seen), Within(shift.Mean), new(Within(interval.Low), Within(interval.High)));

        double Within(double by) => Rounded(Math.Clamp(by, limits.Low, limits.High));
    }

    /// <summary>Kinds with enough people, and the rest as one. When the rest would be a few, the kind with the fewest people goes to it, and so on.</summary>
    private (List<KindTally> Own, KindTally Others) Merge(IEnumerable<KindTally> kinds, Func<KindTally, long> people)
    {
        List<KindTally> own = [.. kinds.Where(k => people(k) >= _leastCell)];
        var others = new KindTally(string.Empty);
        foreach (var few in kinds.Where(k => people(k) < _leastCell))
        {
            others.Add(few);
        }

        while (people(others) > 0 && people(others) < _leastCell && own.MinBy(people) is { } fewest)
        {
            own.Remove(fewest);
            others.Add(fewest);
        }

        return (own, others);
    }

    private static double Rounded(double value) => Math.Round(value, 4);
}
