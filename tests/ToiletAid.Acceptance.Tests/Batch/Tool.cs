using System.Diagnostics;

namespace ToiletAid.Acceptance.Tests.Batch;

/// <summary>The program and other tools, run as processes.</summary>
internal static class Tool
{
    /// <summary>The built program, beside the tests.</summary>
    internal static readonly string Program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "toiletaid.exe" : "toiletaid");

    /// <summary>Skips the test with the reason where a tool is missing; where everything must be installed, it fails instead.</summary>
    internal static void Require(string tool, string package)
    {
        bool there = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(p => File.Exists(Path.Combine(p, tool)));
        Assert.True(there || Environment.GetEnvironmentVariable("CI") != "true", $"{tool} is missing, install the Debian package {package}");
        Assert.SkipUnless(there, $"{tool} is missing, install the Debian package {package}");
    }

    internal static Process Start(string file, params string[] args) => Process.Start(new ProcessStartInfo(file, args)
    {
        UseShellExecute = false,
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    /// <summary>The same, with signals as a program at a terminal has them: tests that a shell started in the background hand on that Control C is ignored.</summary>
    internal static Process StartStoppable(string file, params string[] args) => OperatingSystem.IsLinux() ? Start("env", ["--default-signal", file, .. args]) : Start(file, args);

    /// <summary>Runs a tool on this input to its end.</summary>
    internal static async Task<(int Code, string Output, string Error)> Run(string input, string file, params string[] args)
    {
        using var process = Start(file, args);
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output, await error);
    }
}
