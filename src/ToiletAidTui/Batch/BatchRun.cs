using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Batch;

/// <summary>Works through a set of profiles: in order, on every core, with refused ones told and a stop that can be resumed.</summary>
internal sealed class BatchRun(Terminal terminal, QuestionSet questions, BatchSettings settings)
{
    /// <summary>For output of which every part stands by itself.</summary>
    internal const string AddIt = " and add its output to this one";

    private long _seen;
    private long _done;
    private long _refused;
    private int _code = ExitCode.Good;

    /// <summary>Does the work.</summary>
    /// <typeparam name="T">What comes out for a profile.</typeparam>
    /// <param name="paths">Where profiles are.</param>
    /// <param name="makeWorker">Called once on each working thread, because what keeps caches serves one thread.</param>
    /// <param name="write">Called with each result, in the order of the input.</param>
    /// <param name="join">How the output of a resumed run goes with that of the stopped one: a sentence without its first part, "To go on, give the same command with --resume N".</param>
    /// <returns>The exit code.</returns>
    internal int Run<T>(IReadOnlyCollection<string> paths, Func<Func<Profile, T>> makeWorker, Action<T> write, string join)
        where T : class
    {
        var source = new BatchSource(questions, terminal);
        var progress = new Progress(terminal.ErrorIsTerminal && !settings.Quiet ? terminal.Error : null);
        FileStream? list = null;
        if (settings.Rejects is { } refused)
        {
            var target = OutputFile.Target(terminal, refused);
            if ((target.TryGet(out var file) ? file.OpenList(append: settings.Resume > 0, out list) : target.Issues[0]) is { } fault)
            {
                terminal.Complain(refused.Length > 0 ? refused : "--rejects", [fault.Code == OutputTarget.CannotWrite ? fault with { Message = $"it cannot be written, {fault.Message}" } : fault]);
                return fault.Code == "is-input" ? ExitCode.WrongUsage : ExitCode.InputRefused;
            }
        }

        var rejects = list is null ? null : new RejectFile(list);
        using (rejects)
        {
            var work = new OrderedWork<BatchInput, Outcome<T>>(settings.Jobs, i => i.Utf8?.Length ?? 0);
            using var signals = new StopSignals(_ => work.Stop());
            work.Run(
                Skip(source.All(paths)),
                () => Worker(source, makeWorker()),
                outcome =>
                {
                    Take(outcome, rejects, write);
                    progress.At(settings.Resume + ++_done);
                },
                terminal.Output.Flush);
            return End(signals, join);
        }
    }

    private IEnumerable<BatchInput> Skip(IEnumerable<BatchInput> all)
    {
        foreach (var input in all)
        {
            if (_seen++ >= settings.Resume)
            {
                yield return input;
            }
        }
    }

    private static Func<BatchInput, Outcome<T>> Worker<T>(BatchSource source, Func<Profile, T> work)
        where T : class => input =>
    {
        if (input.Fault is { } fault)
        {
            return new(input, null, [fault]);
        }

        var read = source.Read(input);
        if (!read.TryGet(out var profile))
        {
            return new(input, null, read.Issues);
        }

#pragma warning disable CA1031 // One profile on which the program fails must not end a night's run; it is told and has its own exit code.
        try
        {
            return new(input, work(profile), []);
        }
        catch (Exception e)
        {
            return new(input, null, [new("our-fault", string.Empty, $"toiletaid failed on it through a fault of its own, {e.GetType().Name}, please report it")], OurFault: true);
        }
#pragma warning restore CA1031
    };

    private void Take<T>(Outcome<T> outcome, RejectFile? rejects, Action<T> write)
        where T : class
    {
        if (outcome.Value is { } value)
        {
            write(value);
            return;
        }

        _refused++;
        _code = outcome.OurFault ? ExitCode.OurFault : _code == ExitCode.OurFault ? _code : ExitCode.InputRefused;
        if (rejects is not null)
        {
            rejects.Write(outcome.Input, outcome.Issues);
            return;
        }

        terminal.Complain(outcome.Input.Name, outcome.Issues);
    }

    private int End(StopSignals signals, string join)
    {
        if (_refused > 0 && settings.Rejects is { } file)
        {
            terminal.Error.WriteLine($"{(_refused == 1 ? "1 profile was" : $"{_refused} profiles were")} refused. The reasons are in {file}.");
        }

        if (!signals.HasCome && _seen < settings.Resume)
        {
            terminal.Error.WriteLine($"--resume {settings.Resume} is past the end: there {(_seen == 1 ? "is 1 profile" : $"are {_seen} profiles")}. Nothing was done.");
            return ExitCode.WrongUsage;
        }

        if (!signals.HasCome)
        {
            return _code;
        }

        long from = settings.Resume + _done;
        terminal.Error.WriteLine($"Stopped after {(from == 1 ? "1 profile" : $"{from} profiles")}. To go on, give the same command with --resume {from}{join}.");
        return signals.ExitCode;
    }
}
