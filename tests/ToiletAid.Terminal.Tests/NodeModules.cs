using System.Diagnostics;

namespace ToiletAid.Terminal.Tests;

/// <summary>Packages of a package.json in a folder outside the repository, filled once, and scripts that use them.</summary>
internal static class NodeModules
{
    private static readonly Lock Filling = new();

    /// <summary>The folder with the packages; the test is skipped where they cannot be had.</summary>
    /// <param name="area">Folder of the test, which holds package.json.</param>
    /// <param name="done">A file that is there when everything is.</param>
    internal static string Of(string area, params string[] done)
    {
        Tools.Need("node", "npm");
        using var alone = Filling.EnterScope();
        string wanted = File.ReadAllText(Script(area, "package.json"));
        string folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), $"toiletaid-{area.ToLowerInvariant()}-modules")).FullName;
        string had = Path.Combine(folder, "package.json"), last = Path.Combine([folder, "node_modules", .. done]);
        if (File.Exists(had) && File.ReadAllText(had) == wanted && File.Exists(last))
        {
            return folder;
        }

        File.WriteAllText(had, wanted);
        string? fault = null;
        try
        {
            Run("npm", "install", "--prefix", folder, "--no-audit", "--no-fund", "--ignore-scripts");
        }
        catch (InvalidOperationException e)
        {
            fault = e.Message;
        }

        Tools.Require(fault is null && File.Exists(last), $"npm could not fetch the packages of {area}, {fault}");
        return folder;
    }

    internal static string Script(string area, string name) => Repository.Path("tests", "ToiletAid.Terminal.Tests", area, name);

    internal static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var error = process.StandardError.ReadToEndAsync();
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? text : throw new InvalidOperationException($"{program} ended with {process.ExitCode}, {error.GetAwaiter().GetResult()}");
    }
}
