using System.Globalization;

namespace ToiletAid.TestKit;

/// <summary>How much this run of the tests does: little by default, all of it in CI or with AllTests=true.</summary>
internal static class TestRun
{
    private const ulong UsualSeed = 20260309;

    internal static bool IsCi { get; } = Is("CI");

    internal static bool DoesAll { get; } = IsCi || Is("AllTests");

    /// <summary>Seed of everything that tests draw. TEST_SEED gives another one, and CI takes a new one each time.</summary>
    internal static ulong Seed { get; } = ulong.TryParse(Environment.GetEnvironmentVariable("TEST_SEED"), CultureInfo.InvariantCulture, out ulong named)
        ? named
        : IsCi ? (ulong)Random.Shared.NextInt64() : UsualSeed;

    internal static int Times(int all, int few) => DoesAll ? all : few;

    private static bool Is(string variable) => Environment.GetEnvironmentVariable(variable) == "true";
}
