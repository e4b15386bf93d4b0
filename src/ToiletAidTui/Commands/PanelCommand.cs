using System.Collections.Immutable;
using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Panels;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Panels;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAidTui.Batch;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Makes cases for a panel of experts, and says how their ratings agree with each other and with the tool.</summary>
internal sealed class PanelCommand
{
    private const int MostPeople = 500;

    /// <summary>Day of every case: not today, so that the same command gives the same bytes on any day.</summary>
    private static readonly DateOnly Day = new(2026, 1, 1);

    private readonly Argument<string?> _folder = new("DIR") { Description = "Folder of a panel whose ratings have come back.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string[]> _ratings = new("--ratings") { HelpName = "FILE", Description = "Filled forms, one for each rater.", AllowMultipleArgumentsPerToken = true };
    private readonly Option<int?> _people = new("--people") { Description = "How many cases to make." };
    private readonly Option<ulong> _seed = BatchOptions.Seed();
    private readonly Option<string?> _out = new("--out") { HelpName = "DIR", Description = "Folder for case pages, instructions and the form." };
    private readonly Option<string?> _aids = StockOption.Define();
    private readonly Terminal _terminal;

    private PanelCommand(Terminal terminal)
    {
        _terminal = terminal;
        _people.Validators.Add(r => NumberRange.Check(r, 1, MostPeople, "--people"));
    }

    internal static Command Define(Terminal terminal)
    {
        var panel = new PanelCommand(terminal);
        var command = new Command("panel", "Make cases for a panel of experts without the tool's answer, and say how their ratings agree.")
        {
            panel._folder, panel._ratings, panel._people, panel._seed, panel._out, panel._aids, ClinicOption.Define(),
        };
        command.SetAction(panel.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        string? folder = parsed.GetValue(_folder), target = parsed.GetValue(_out);
        string[] ratings = parsed.GetValue(_ratings) ?? [];
        int? people = parsed.GetValue(_people);
        bool makes = people is not null && target is not null && folder is null && ratings.Length == 0, rates = folder is not null && ratings.Length > 0 && people is null && target is null;
        if (!makes && !rates)
        {
            _terminal.Error.WriteLine("Give --people and --out to make cases, or the folder of a panel and --ratings with the filled forms. Type toiletaid panel --help for both.");
            return ExitCode.WrongUsage;
        }

        if (StockOption.Over(BuiltIn.Knowledge(), parsed.GetValue(_aids), _terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        return makes ? Make(knowledge, people!.Value, parsed.GetValue(_seed), target!) : Rate(knowledge, folder!, ratings, parsed.GetValue(_seed));
    }

    private int Make(KnowledgeBase knowledge, int people, ulong seed, string folder)
    {
        using var notice = WorkNotice.Of(_terminal);
        var simulator = new PeopleSimulator(knowledge, BuiltIn.People());
        var advisor = new Advisor(knowledge, AdviceSettings.WhileAsking);
        var cases = new List<Profile>();

        // Where a red flag stops everything, or one kind alone is left, there is nothing to rank.
        for (long number = 0; cases.Count < people && number < PeopleSimulator.Most; number++)
        {
            var person = simulator.Make(seed, number, Depth.Full, Day);
            if (advisor.Advise(person.Latest.Answers).Ranked.Length > 1)
            {
                cases.Add(person);
            }
        }

        try
        {
            new PanelFolder(knowledge).Write(folder, cases);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            notice?.Dispose();
            _terminal.Error.WriteLine($"{(folder.Length == 0 ? "The folder" : folder)} could not be written, {FileFault.Reason(e)}.");
            return ExitCode.InputRefused;
        }

        notice?.Dispose();
        _terminal.Results.Line($"{(people == 1 ? "1 case is" : $"{people} cases are")} in {folder}: a page each, {PanelFolder.Instructions}, {PanelFolder.Form} to be filled by each rater, and {PanelFolder.Cases} for the tool.");
        return ExitCode.Good;
    }

    private int Rate(KnowledgeBase knowledge, string folder, string[] ratings, ulong seed)
    {
        var people = new List<Profile>();
        int code = new BatchRun(_terminal, knowledge.Questions, new(1, 0, null, true, new())).Run<Profile>(
            [Path.Combine(folder, PanelFolder.Cases)], () => profile => profile, people.Add, string.Empty);
        if (code != ExitCode.Good || people.Count == 0)
        {
            return code == ExitCode.Good ? ExitCode.InputRefused : code;
        }

        var kinds = new PanelFolder(knowledge).Kinds;
        var reader = new RatingReader([.. people.Select(p => p.Person)], kinds);
        var raters = ImmutableArray.CreateBuilder<Rater>();
        foreach (string file in ratings)
        {
            var read = reader.Read(file);
            if (read.TryGet(out var rater))
            {
                raters.Add(rater);
            }
            else
            {
                _terminal.Complain(file, read.Issues);
                code = ExitCode.InputRefused;
            }
        }

        if (code != ExitCode.Good)
        {
            return code;
        }

        using var notice = WorkNotice.Of(_terminal);
        var advisor = new Advisor(knowledge, AllCores.Advice);
        ImmutableArray<PanelCase> cases = [.. people.Select(p => new PanelCase(p.Person, p.Latest.Answers, advisor.Advise(p.Latest.Answers)))];
        notice?.Dispose();
        if (cases.FirstOrDefault(c => c.Advice.Ranked.IsEmpty) is { } empty)
        {
            _terminal.Error.WriteLine($"{folder}: the tool ranks nothing in case {empty.Code}, make the panel again with this version.");
            return ExitCode.InputRefused;
        }

        _terminal.Results.Lines(new PanelText(knowledge).Lines(cases, kinds, raters.ToImmutable(), seed).Concat(ClinicText.Used(knowledge)));
        return ExitCode.Good;
    }
}
