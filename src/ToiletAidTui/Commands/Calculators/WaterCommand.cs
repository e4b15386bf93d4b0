using ToiletAid.App.Calculators;
using ToiletAid.App.Stock;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>The calculator of water.</summary>
internal static class WaterCommand
{
    internal static Calculator Calculator { get; } = new(
        "water",
        "Spray time, weight when full, and how to mix warm water that is never above the limit.",
        [
            ("aid", "Id of a washing aid. It gives reservoir, flow and weight unless they are given too."),
            ("reservoir", "Reservoir, such as \"180 ml\"."),
            ("flow", "Flow, such as \"4 ml/s\"."),
            ("per-clean", "Water for one clean, such as \"160 ml\"."),
            ("mass", "Weight without water, such as \"280 g\"."),
            ("hot", "Hot water at the tap, such as \"60 C\" or \"140 F\"."),
            ("cold", "Cold water at the tap, such as \"10 C\"."),
            ("target", "Target temperature, such as \"36 C\"."),
            ("feeling", "Sensation in the skin that is washed: usual, reduced, none. The lower limit applies if left out."),
        ],
        Compute);

    private static WaterCalculation? Compute(CalculatorInput input)
    {
        input.Answers(QuestionIds.Feeling);
        var aid = input.Aid();
        double? reservoir = input.Quantity("reservoir", StockRanges.Typed("reservoir", "reservoir"));
        double? flow = input.Quantity("flow", StockRanges.Typed("flow", "flow"));
        double? clean = input.Quantity("per-clean", StockRanges.Typed("perClean", "water for one clean"));
        double? mass = input.Quantity("mass", StockRanges.Typed("mass", "weight"));
        double? hot = input.Quantity("hot", Temperature("hot water")), cold = input.Quantity("cold", Temperature("cold water"));
        double? target = input.Quantity("target", Temperature("target"));
        if (aid is { Water: null })
        {
            input.Typed.Fault("aid", $"{aid.Id} uses no water. Use one of {string.Join(", ", input.Knowledge.Catalogue.Aids.Where(a => a.Water is not null).Select(a => a.Id))}.");
        }

        if (!input.Has("aid") && !(input.Has("reservoir") && input.Has("flow")))
        {
            input.Typed.Fault(input.Has("reservoir") ? "flow" : "reservoir", "It is missing. Give --reservoir and --flow, or --aid.");
        }

        if (input.Typed.Faults.Count > 0)
        {
            return null;
        }

        var settings = new WaterSettings
        {
            Aid = aid?.Name,
            Use = Use(aid, reservoir, flow, clean),
            KnowsOneClean = aid is not null || clean is not null,
            EmptyKilograms = mass ?? aid?.Mass.Value,
            Hot = hot,
            Cold = cold,
            Target = target,
            FeelsHeat = input.Typed.Answers.Is(OptionIds.FeelingUsual),
            FeelingIsGiven = input.Has("feeling"),
        };
        var (hotSupply, coldSupply) = WaterCalculation.Supplies(input.Knowledge, settings);
        if (hotSupply < coldSupply)
        {
            input.Typed.Fault(hot is null ? "cold" : "hot", "The hot water is colder than the cold water. Measure both, or change them round.");
            return null;
        }

        return new(input.Knowledge, settings);
    }

    private static QuantityQuestion Temperature(string name) => StockRanges.Typed("temperature", name);

    private static WaterUse Use(Aid? aid, double? reservoir, double? flow, double? clean)
    {
        var use = aid?.Water ?? new() { GentleFlow = Given(flow!.Value), StrongFlow = Given(flow.Value), PerClean = Given(clean ?? reservoir!.Value), CanBeWarm = true };
        return use with
        {
            Reservoir = reservoir is { } r ? Given(r) : use.Reservoir,
            GentleFlow = flow is { } gentle ? Given(gentle) : use.GentleFlow,
            StrongFlow = flow is { } strong ? Given(strong) : use.StrongFlow,
            PerClean = clean is { } c ? Given(c) : use.PerClean,
        };
    }

    private static Sourced Given(double value) => new(value, value, value, Basis.Estimate, "Given on the command line.");
}
