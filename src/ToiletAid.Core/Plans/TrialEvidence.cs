using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>What was seen when plans were tried, put together with what is predicted.</summary>
/// <remarks>Bayes for a normal value with known errors. The prediction x of a criterion has the variance s², the spread over the persons that the answers
/// allow plus that of the model itself; a run that saw y has the variance t². What is believed then is (x/s² + y/t²) / (1/s² + 1/t²), and every
/// further run adds its term. A run that failed saw that the plan as a whole is worth nothing, as the prediction has it for a hand that cannot
/// do a step: each criterion is multiplied by the share of the weights 1/s² and 1/t² that lies with the prediction and with runs that did not
/// fail. It is done in every drawn case, so a failed run lowers the plan for every person and every weighting, and a good one raises it or
/// leaves it.</remarks>
public sealed class TrialEvidence
{
    private readonly ImmutableArray<Seen> _runs;

    private TrialEvidence(ImmutableArray<Seen> runs) => _runs = runs;

    /// <summary>Evidence of trials.</summary>
    /// <param name="knowledge">What findings count for, and the errors.</param>
    /// <param name="trials">The trials, oldest first.</param>
    /// <param name="spread">Variance of each criterion of a plan over the persons that the answers allow, in the order of the criteria.</param>
    /// <returns>Null when no trial says anything about a plan of the catalogue.</returns>
    public static TrialEvidence? Of(KnowledgeBase knowledge, ImmutableArray<PastTrial> trials, Func<Plan, double[]> spread)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(spread);
        double model = knowledge.Evidence.Value(EvidenceIds.TrialErrorPrediction);
        var runs = ImmutableArray.CreateBuilder<Seen>();
        foreach (var trial in trials)
        {
            if (trial.Trial.Plan.In(knowledge.Catalogue) is not { } plan)
            {
                continue;
            }

            double[] precision = [.. spread(plan).Select(v => 1 / (v + (model * model)))];
            foreach (var run in trial.Trial.Runs)
            {
                var findings = RunFindings.Of(knowledge.Trials, knowledge.Evidence, run, plan.Aid.Method == MethodKind.Helper);
                if (findings.WasTried)
                {
                    runs.Add(new(plan, findings, precision, Precision(knowledge.Evidence, run.Kind)));
                }
            }
        }

        return runs.Count == 0 ? null : new(runs.ToImmutable());
    }

    /// <summary>What is believed of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="predicted">Its predicted values in the order of the criteria; replaced by what is believed.</param>
    public void Update(Plan plan, Span<double> predicted)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (_runs.FirstOrDefault(r => r.SpeaksFor(plan)) is not { } first)
        {
            return;
        }

        double worked = _runs.Sum(r => r.Worked(plan) ? r.Precision : 0), failed = _runs.Sum(r => r.Failed(plan) ? r.Precision : 0);
        for (int c = 0; c < Criteria.Count; c++)
        {
            // The spread of the plan that was tried first stands for that of its kin.
            double prior = first.Prior[c], sum = predicted[c] * prior, precision = prior;
            foreach (var run in _runs)
            {
                if (run.Saw(plan, (Criterion)c, predicted[c]) is { } value)
                {
                    sum += value * run.Precision;
                    precision += run.Precision;
                }
            }

            predicted[c] = sum / precision * ((prior + worked) / (prior + worked + failed));
        }
    }

    private static double Precision(EvidenceTable evidence, RunKind kind)
    {
        double error = evidence.Value(kind == RunKind.Real ? EvidenceIds.TrialErrorReal : EvidenceIds.TrialErrorDry);
        return 1 / (error * error);
    }

    /// <summary>A run of a plan.</summary>
    private sealed record Seen(Plan Plan, RunFindings Findings, double[] Prior, double Precision)
    {
        internal bool SpeaksFor(Plan plan) => Failed(plan) || (Findings.Failures.IsEmpty && plan.Aid.KindId == Plan.Aid.KindId);

        /// <summary>True when the run shows that the plan fails.</summary>
        internal bool Failed(Plan plan) => IsKin(plan) && Findings.Failures.Any(f => WouldFail(plan, f));

        /// <summary>True when the run shows that the plan works.</summary>
        internal bool Worked(Plan plan) => Findings.Failures.IsEmpty && plan.Aid.KindId == Plan.Aid.KindId && Shares(plan, Criterion.Reach) && Shares(plan, Criterion.Handling);

        /// <summary>What the run saw of a criterion of a plan; null when it saw nothing of it. Harm counts where it is worse than was predicted; that one try did no
        /// harm says nothing.</summary>
        internal double? Saw(Plan plan, Criterion criterion, double predicted) =>
            !Findings.Failures.IsEmpty || plan.Aid.KindId != Plan.Aid.KindId || !Shares(plan, criterion) || Findings.Seen[(int)criterion] is not { } seen ? null
            : criterion is Criterion.Skin or Criterion.Contact ? Math.Min(seen, predicted)
            : seen;

        /// <summary>A failure with a method alone is one of every plan in which that method comes first or follows.</summary>
        private bool IsKin(Plan plan) => plan.Aid.KindId == Plan.Aid.KindId || (Plan.Companion is null && plan.Companion?.Id == Plan.Aid.KindId);

        /// <summary>True when nothing about the plan is easier in what failed. What a hand could not do with a kind counts against each of its variants: which
        /// step it was, and whether a variant eases it, is not noted.</summary>
        private bool WouldFail(Plan plan, TrialFinding failure) => failure.Fails == Criterion.Handling
            ? !plan.AddOns.Any(a => !Plan.Has(a.Id) && failure.EasedBy.Any(e => e.By(a)))
            : Shares(plan, failure.Fails!.Value);

        /// <summary>True when the two plans have in common what the criterion depends on.</summary>
        private bool Shares(Plan plan, Criterion criterion) => criterion switch
        {
            Criterion.Reach => plan.Approach == Plan.Approach && plan.Posture == Plan.Posture && (SameVariant(plan) || plan.Aid.Length?.Value == Plan.Aid.Length?.Value),
            Criterion.Handling or Criterion.Learning or Criterion.Independence => SameForHand(plan) && ForHand(plan).SequenceEqual(ForHand(Plan)),
            Criterion.Cleaning => plan.Companion?.Id == Plan.Companion?.Id && plan.Approach == Plan.Approach && SameHead(plan),
            _ => SameVariant(plan),
        };

        /// <summary>True also of another kind, with which no variant and no article is in common.</summary>
        private bool SameVariant(Plan plan) => plan.Aid.KindId != Plan.Aid.KindId || plan.Aid.Key == Plan.Aid.Key;

        private bool SameForHand(Plan plan) => SameVariant(plan) || (plan.Aid.Operations.SequenceEqual(Plan.Aid.Operations) && plan.Aid.Mass == Plan.Aid.Mass && plan.Aid.Steps == Plan.Aid.Steps);

        private bool SameHead(Plan plan) => SameVariant(plan) || (plan.Aid.TipWidth == Plan.Aid.TipWidth && plan.Aid.Coverage == Plan.Aid.Coverage);

        private static IEnumerable<string> ForHand(Plan plan) => plan.AddOns.Where(a => a.OnlyHelps).Select(a => a.Id);
    }
}
