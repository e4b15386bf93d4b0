using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.Core.Advising;
using ToiletAidTui.Commands.About;
using ToiletAidTui.Commands.Calculators;
using ToiletAidTui.Commands.Completion;
using ToiletAidTui.Commands.Help;
using ToiletAidTui.Commands.Manual;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>The command line: arguments in, exit code out.</summary>
public static class CliHost
{
    private const string PassphraseFile = "--passphrase-file";
    private const string PassphraseDescriptor = "--passphrase-fd";

    /// <summary>Runs a command.</summary>
    /// <param name="args">Arguments as typed.</param>
    /// <param name="terminal">What it talks to.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, Terminal terminal)
    {
        var parsed = Root(terminal).Parse(args);
        if ((UsageFault.OptionAmongArguments(parsed) ?? parsed.Errors.Select(UsageFault.Sentence).FirstOrDefault()) is { } fault)
        {
            terminal.Error.WriteLine(fault);
            return ExitCode.WrongUsage;
        }

        var named = parsed.Tokens.Where(t => t.Type == TokenType.Argument).Select(t => t.Value).ToList();

        // Also what stands behind an equals sign, such as in aids=stock.json.
        terminal.Named = [.. named, .. named.Where(v => v.Contains('=', StringComparison.Ordinal)).Select(v => v[(v.IndexOf('=', StringComparison.Ordinal) + 1)..])];
        terminal.Passphrase = new(terminal, parsed.GetValue<string?>(PassphraseFile), parsed.GetValue<int?>(PassphraseDescriptor));
        terminal.Clinic = ClinicOption.Of(parsed);
        try
        {
            return parsed.Invoke(new() { Output = terminal.Output, Error = terminal.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
        }
        catch (IOException e)
        {
            terminal.Error.WriteLine($"The output could not be written, {FileFault.Reason(e)}.");
            return ExitCode.InputRefused;
        }
    }

    /// <summary>Every command, for parsing, help and tests.</summary>
    public static RootCommand Root(Terminal terminal)
    {
        var root = new RootCommand("Matches a person who can no longer clean themselves after using the toilet to the right kind of aid.")
        {
            AssessCommand.Define(terminal),
            RankCommand.Define(terminal),
            SimulateCommand.Define(terminal),
            WhatIfCommand.Define(terminal),
            WhyCommand.Define(terminal),
            NextCommand.Define(terminal),
            LookForCommand.Define(terminal),
            FitsCommand.Define(terminal),
            CompareCommand.Define(terminal),
            TrialCommand.Define(terminal),
            OutcomesCommand.Define(terminal),
            PanelCommand.Define(terminal),
            CaseloadCommand.Define(terminal),
            ReportCommand.Define(terminal),
            QuestionsCommand.Define(terminal),
            AidsCommand.Define(terminal),
            ExplainCommand.Define(terminal),
            CalcCommand.Define(terminal),
            SettingsCommand.Define(terminal),
            AccessibilityCommand.Define(terminal),
            AboutCommand.Define(terminal),
            CompletionCommand.Define(terminal),
            KeepingCommands.Protect(terminal),
            KeepingCommands.Unprotect(terminal),
            KeepingCommands.ChangePassphrase(terminal),
            KeepingCommands.Erase(terminal),
            new Option<string?>(PassphraseFile) { HelpName = "FILE", Description = "File whose first line is the passphrase.", Recursive = true },
            new Option<int?>(PassphraseDescriptor) { Description = "The same, as the number of an open file.", Recursive = true },
        };
        // The library's other names for help start with a slash, and so do paths.
        root.Options.Remove(root.Options.OfType<HelpOption>().Single());
        root.Options.Add(new HelpOption("--help", "-h", "-?") { Action = new HelpPageAction(terminal) });
        root.Subcommands.Add(ManualCommand.Define(terminal, root));
        var suggest = root.Directives.OfType<SuggestDirective>().Single();
        suggest.Action = new SuggestAction(terminal, root, suggest);
        var mode = new ModeOptions();
        mode.AddTo(root);
        var aids = StockOption.Define();
        root.Options.Add(aids);
        root.SetAction(parsed =>
        {
            if (!terminal.InputIsTerminal || !terminal.OutputIsTerminal)
            {
                terminal.Error.WriteLine("Give a command, or run toiletaid alone on a terminal. Type toiletaid --help for the commands.");
                return ExitCode.WrongUsage;
            }

            if (mode.Choose(parsed, terminal) is not { } interfaceMode)
            {
                return ExitCode.WrongUsage;
            }

            return StockOption.Over(BuiltIn.Knowledge(), parsed.GetValue(aids), terminal) is { } knowledge
                ? new ScreenCommand(terminal, knowledge, new Advisor(knowledge, AllCores.Advice), interfaceMode, 3, parsed.GetValue(aids)).Run(null)
                : ExitCode.InputRefused;
        });
        return root;
    }
}
