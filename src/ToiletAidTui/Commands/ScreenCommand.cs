using System.Collections.Immutable;
using ToiletAid.App.Store;
using ToiletAid.App.Trials;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.FullScreen;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Modes;
using ToiletAidTui.Screens;
using ToiletAidTui.Settings;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Commands;

/// <summary>The program as screens: what is run when a person sits at the terminal.</summary>
internal sealed class ScreenCommand(Terminal terminal, KnowledgeBase knowledge, Advisor advisor, InterfaceMode interfaceMode, int top, string? stock)
{
    private readonly DraftFile _drafts = new(knowledge.Questions, terminal.Variable);

    /// <summary>What follows the result in linear mode, once; gives an exit code to end with.</summary>
    internal Func<Visit, int?>? AfterResult { get; init; }

    /// <summary>True when the linear mode was told before.</summary>
    internal bool IsGreeted { get; init; }

    /// <summary>Runs from the first screen, or from a visit that is already set up.</summary>
    /// <param name="visit">The visit; null for the first screen.</param>
    /// <param name="first">What is done at once; null for nothing.</param>
    internal int Run(Visit? visit, KeyAction? first = null)
    {
        terminal.Keyboard?.Word = key => KeyWords.Of(interfaceMode.Settings.Keys, key);
        var services = Services();
        var shell = new Shell(services);
        if (visit is not null)
        {
            visit.Kept?.Tell = shell.Warn;
            StartPages.Begin(shell, visit);
            if (first is { } act)
            {
                shell.Press(new(act));
            }
        }
        else
        {
            shell.Push(StartPages.Stopped(services, null, null, StartPages.Start) ?? StartPages.Start());
        }

        using var guard = new ShutdownGuard(terminal, _drafts, () => shell.Visit);
        var options = new FullScreenOptions
        {
            Clock = terminal.Clock,
            HighContrast = interfaceMode.Settings.HighContrast && terminal.Variable(EnvironmentVariables.NoColour) is null or "",
            IdleUntilHidden = interfaceMode.Settings.IdleUntilHidden,
            IsStopped = () => guard.HasStopped,
        };
        int? code = null;
        var modes = new TwoModes(terminal, shell, options, guard)
        {
            IsGreeted = IsGreeted,
            CanDraw = interfaceMode.CanDraw,
            AfterResult = AfterResult is { } after ? () => (code = after(shell.Visit!)) is null : null,
        };
        try
        {
            int end = End(guard, modes.Run(interfaceMode.Mode));
            return code ?? end;
        }
        catch
        {
            guard.Say("Stopped by a fault.");
            throw;
        }
    }

    private int End(ShutdownGuard guard, Ending ending)
    {
        if (interfaceMode.Settings.ClearOnLeaving && interfaceMode.CanDraw)
        {
            TwoModes.Clear(terminal);
        }

        if (ending == Ending.Left)
        {
            return ExitCode.Good;
        }

        guard.Say("Stopped.");
        return guard.HasStopped ? guard.StopCode : ExitCode.Good;
    }

    private ScreenServices Services()
    {
        var files = new ProfileFile(knowledge.Questions);
        var planner = QuestionPlanner.For(knowledge);
        var parts = new AdviceParts(knowledge, advisor, planner, top);
        var functions = new ScreenFunctions(terminal, knowledge);
        return new()
        {
            Questions = knowledge.Questions,
            Open = planner.Open,
            Files = files,
            Profiles = new(terminal.Variable),
            EachAnswer = (path, earlier) => _drafts.EachAnswer(path, terminal.Passphrase.GetUnasked, earlier is { IsProtected: true }),
            Passphrase = terminal.Passphrase.GetUnasked,
            Know = terminal.Passphrase.Know,
            OneKey = interfaceMode.Settings.OneKey,
            Keys = interfaceMode.Settings.Keys,
            Today = () => terminal.Today,
            Trial = (Profile profile, out ImmutableArray<string> faults) => TrialRecording.Begin(knowledge, advisor, profile, terminal.Today, terminal.Today, out faults),
            Result = parts.Of,
            Ended = parts.Ended,
            Why = parts.Why,
            Counterfactuals = parts.Counterfactuals,
            LookFor = parts.LookFor,
            Article = parts.Article,
            Verdict = parts.Verdict,
            KeepArticle = (interview, path) => FitsCommand.Keep(interview, path, terminal.Today).Said,
            Stock = stock,
            Kinds = [.. knowledge.Catalogue.Aids.Select(a => (a.Id, a.Name))],
            Calculators = functions.Calculators,
            Compare = functions.Compare,
            Explain = functions.Explain,
            Document = functions.Document,
            Settings = (out string? fault) => interfaceMode.Reader.Read(new Dictionary<string, string>(), out fault),
            Keep = new UserSettings(interfaceMode.Reader.UserPath).Set,
        };
    }
}
