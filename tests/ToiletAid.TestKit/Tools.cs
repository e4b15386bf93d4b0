namespace ToiletAid.TestKit;

/// <summary>Programs that a test needs. Without one it is skipped with the reason, but in CI that is a failure: there the proof has to be made.</summary>
internal static class Tools
{
    internal static void Need(params string[] programs)
    {
        string[] missing = [.. programs.Where(p => !Exists(p))];
        Require(missing.Length == 0, $"{string.Join(" and ", missing)} not installed");
    }

    internal static void Require(bool there, string reason)
    {
        if (there)
        {
            return;
        }

        Assert.False(Environment.GetEnvironmentVariable("CI") == "true", $"CI has to have what this test needs: {reason}.");
        Assert.Skip(reason);
    }

    private static bool Exists(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(':').Any(f => f.Length > 0 && File.Exists(Path.Combine(f, program)));
}
