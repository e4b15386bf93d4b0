using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>What an aid with its add-ons asks of one person's hand, made ready once so that it can be scored for many strengths.</summary>
public sealed class HandlingDemands
{
    private readonly HandTask[] _tasks;
    private readonly HandCoefficients _coefficients;
    private readonly HoldDemand _hold;
    private readonly bool? _accessible;

    private HandlingDemands(HandTask[] tasks, HoldDemand hold, bool? accessible, HandCoefficients coefficients)
    {
        _tasks = tasks;
        _hold = hold;
        _accessible = accessible;
        _coefficients = coefficients;
    }

    /// <summary>Makes an aid ready.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="addOns">Add-ons that are used with it.</param>
    /// <param name="person">The person.</param>
    /// <param name="slowness">How slow the hand is with small things, from <see cref="HandCapacity.Slowness"/>.</param>
    /// <param name="coefficients">Coefficients.</param>
    public static HandlingDemands Of(Aid aid, ReadOnlySpan<AddOn> addOns, HandFacts person, double slowness, HandCoefficients coefficients)
    {
        var help = HandHelp.Of(addOns);
        var hold = HoldDemand.Of(aid, coefficients);
        var tasks = new HandTask[aid.Operations.Length];
        bool? accessible = null;
        for (int i = 0; i < tasks.Length; i++)
        {
            var operation = aid.Operations[i];
            tasks[i] = TaskMaking.Task(aid, operation, help, hold, person, slowness, coefficients);
            if (operation.Kind == OperationKind.Release)
            {
                accessible = (accessible ?? true) && AccessibilityLine.Meets(operation, coefficients);
            }
        }

        return new(tasks, hold, accessible, coefficients);
    }

    /// <summary>How a hand of this strength copes. Makes no garbage.</summary>
    /// <param name="strength">Strength, from <see cref="HandCapacity.At"/>.</param>
    public HandlingScore Score(in HandStrength strength)
    {
        bool possible = true;
        double value = 1, success = 1;
        OperationKind? limiting = null;
        var obstacle = HandlingObstacle.None;
        for (int i = 0; i < _tasks.Length; i++)
        {
            ref readonly var task = ref _tasks[i];
            var effort = HandEffort.Easiest(task, strength);
            var standing = Obstacle(task, effort);
            double worth = Worth(task, effort, standing);
            possible &= standing == HandlingObstacle.None;
            success *= 1 - Failure(task, effort, standing);
            if (limiting is null || worth < value)
            {
                (value, limiting, obstacle) = (worth, task.Kind, standing);
            }
        }

        return new(possible, value, 1 - success, limiting, obstacle);
    }

    /// <summary>How a hand of this strength copes, operation by operation.</summary>
    /// <param name="strength">Strength, from <see cref="HandCapacity.At"/>.</param>
    public HandlingAssessment Assess(in HandStrength strength)
    {
        var operations = ImmutableArray.CreateBuilder<OperationHandling>(_tasks.Length);
        double seconds = 0;
        foreach (var task in _tasks)
        {
            var effort = HandEffort.Easiest(task, strength);
            var standing = Obstacle(task, effort);
            seconds += task.Seconds;
            operations.Add(new()
            {
                Kind = task.Kind,
                Possible = standing == HandlingObstacle.None,
                Obstacle = standing,
                DemandNewtons = effort.Newtons,
                GraspUsed = effort.Grasp,
                AgainstTheBody = effort.Grasp != Grasp.None && !task.Takes(effort.Grasp),
                CapacityNewtons = effort.Capacity,
                AcceptableNewtons = effort.Capacity * task.AcceptableShare,
                ShareOfAcceptable = effort.Ratio,
                Band = Band(effort.Ratio),
                FailureChance = Failure(task, effort, standing),
                Value = Worth(task, effort, standing),
                Seconds = task.Seconds,
            });
        }

        return new(operations.MoveToImmutable(), Score(strength), _hold, _accessible, seconds);
    }

    private HandlingObstacle Obstacle(in HandTask task, in HandEffort effort) =>
        task.Obstacle != HandlingObstacle.None ? task.Obstacle
        : double.IsPositiveInfinity(effort.Ratio) ? HandlingObstacle.NoUsableGrasp
        : effort.Ratio > _coefficients.RatioPoor ? HandlingObstacle.TooWeak
        : HandlingObstacle.None;

    private EffortBand Band(double ratio) =>
        ratio <= _coefficients.RatioOk ? EffortBand.Ok
        : ratio <= _coefficients.RatioCaution ? EffortBand.Caution
        : ratio <= _coefficients.RatioPoor ? EffortBand.Poor
        : EffortBand.NotFeasible;

    private double Failure(in HandTask task, in HandEffort effort, HandlingObstacle obstacle) => obstacle == HandlingObstacle.None
        ? 1 - ((1 - task.Miss) * (1 - _coefficients.Strain.At(effort.Ratio)))
        : 1;

    private double Worth(in HandTask task, in HandEffort effort, HandlingObstacle obstacle) => obstacle == HandlingObstacle.None
        ? _coefficients.Worth.At(effort.Ratio) * (1 - task.Miss)
        : 0;
}
