using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Person;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>What was typed after the name of the measurement.</summary>
internal sealed record Arguments
{
    internal ulong Seed { get; private init; } = 1;

    internal int People { get; private init; } = 100;

    /// <summary>People over whom a measurement looks for what is worth measuring over all; 0 for all of them.</summary>
    internal int Screen { get; private init; }

    /// <summary>Questions of the curve of loss; 0 for no curve.</summary>
    internal int Curve { get; private init; }

    /// <summary>How many work side by side, where a measurement shares its work.</summary>
    internal int Jobs { get; private init; } = Environment.ProcessorCount;

    /// <summary>Numbers of the evidence that are others than built in, by id.</summary>
    internal ImmutableDictionary<string, double> Numbers { get; private init; } = [];

    internal IReadOnlyList<Depth> Depths { get; private init; } = [Depth.Quick, Depth.Full];

    internal static Arguments Read(ReadOnlySpan<string> typed)
    {
        var arguments = new Arguments();
        for (int i = 0; i + 1 < typed.Length; i += 2)
        {
            string value = typed[i + 1];
            arguments = typed[i] switch
            {
                "--seed" => arguments with { Seed = ulong.Parse(value, CultureInfo.InvariantCulture) },
                "--people" => arguments with { People = int.Parse(value, CultureInfo.InvariantCulture) },
                "--jobs" => arguments with { Jobs = int.Parse(value, CultureInfo.InvariantCulture) },
                "--screen" => arguments with { Screen = int.Parse(value, CultureInfo.InvariantCulture) },
                "--curve" => arguments with { Curve = int.Parse(value, CultureInfo.InvariantCulture) },
                "--number" => arguments with { Numbers = arguments.Numbers.SetItem(value.Split('=')[0], double.Parse(value.Split('=')[1], CultureInfo.InvariantCulture)) },
                "--depth" => arguments with { Depths = [Words.Find<Depth>(value) ?? throw new ArgumentException($"no depth {value}", nameof(typed))] },
                _ => throw new ArgumentException($"no option {typed[i]}", nameof(typed)),
            };
        }

        return arguments;
    }
}
