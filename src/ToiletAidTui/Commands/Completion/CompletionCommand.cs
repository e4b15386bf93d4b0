using System.CommandLine;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Completion;

/// <summary>Prints what a shell needs so that Tab completes.</summary>
internal static class CompletionCommand
{
    private static readonly string[] Shells = ["bash", "zsh", "fish", "powershell"];

    internal static Command Define(Terminal terminal)
    {
        var shell = new Argument<string>("SHELL") { Description = $"One of {string.Join(", ", Shells)}." };
        shell.AcceptOnlyFromAmong(Shells);
        var command = new Command("completion", "Print a script with which a shell completes commands, options and ids at the Tab key.") { shell };
        command.SetAction(parsed =>
        {
            using var script = new StreamReader(typeof(CompletionCommand).Assembly.GetManifestResourceStream($"completion.{parsed.GetValue(shell)}")!);
            terminal.Output.Write(script.ReadToEnd());
            return ExitCode.Good;
        });
        return command;
    }
}
