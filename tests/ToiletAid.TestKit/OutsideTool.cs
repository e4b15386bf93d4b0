using System.Diagnostics;

namespace ToiletAid.TestKit;

/// <summary>Programs of the system that tests compare with.</summary>
internal static class OutsideTool
{
    /// <summary>Skips the test where the tool is missing; in CI that is a failure, or a green run could mean that nothing was compared.</summary>
    internal static void Needs(bool there, string what)
    {
        if (Environment.GetEnvironmentVariable("CI") == "true")
        {
            Assert.True(there, $"{what} is missing, let .ci/run provide it");
        }

        Assert.SkipUnless(there, $"{what} is missing");
    }

    internal static bool Exists(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator).Any(p => File.Exists(Path.Combine(p, name)));

    internal static (int Code, string Output, string Error) Run(string name, string input, params string[] args)
    {
        var start = new ProcessStartInfo(name, args) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
