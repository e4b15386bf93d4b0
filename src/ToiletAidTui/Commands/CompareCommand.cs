using System.Collections.Immutable;
using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Comparing;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Compares two visits of one person.</summary>
internal sealed class CompareCommand
{
    private const string Same = "same";
    private const string Different = "different";

    private readonly Argument<string[]> _paths = ProfileArgument.OneOrTwo();
    private readonly Option<int?> _from = new("--from") { Description = "Number of the earlier visit. The last but one if left out; with two profiles, the last of the first." };
    private readonly Option<int?> _to = new("--to") { Description = "Number of the later visit. The last if left out; with two profiles, counted in the second." };
    private readonly Option<string?> _rater = new("--rater") { Description = "Whether the same person measured both times: same or different." };
    private readonly Option<string?> _picture = new("--picture") { HelpName = "FILE", Description = "File such as change.svg for a drawing of the measurements of three or more visits. Only its owner may read it." };
    private readonly Option<string> _format = Formats.Option(Formats.Text, Formats.Json);

    private readonly Option<string?> _aids = StockOption.Define();

    private readonly Terminal _terminal;

    private CompareCommand(Terminal terminal)
    {
        _terminal = terminal;
        _rater.AcceptOnlyFromAmong(Same, Different);
    }

    internal static Command Define(Terminal terminal)
    {
        var compare = new CompareCommand(terminal);
        var command = new Command("compare", "Compare two visits: what changed, whether it is more than measurement error, and what moved the recommendation.")
        {
            compare._paths, compare._from, compare._to, compare._rater, compare._picture, compare._format, compare._aids, ClinicOption.Define(),
        };
        command.SetAction(compare.Run);
        return command;
    }

    /// <summary>Says how the last two visits in one profile or two compare.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="knowledge">What advice rests on.</param>
    /// <param name="paths">One profile of a person or two.</param>
    internal static int Run(Terminal terminal, KnowledgeBase knowledge, ImmutableArray<string> paths) => new CompareCommand(terminal).Run(knowledge, [.. paths], new());

    private int Run(ParseResult parsed)
    {
        if (OutputFile.Fault(_terminal, parsed.GetValue(_picture)) is { } refused)
        {
            _terminal.Error.WriteLine(refused);
            return ExitCode.InputRefused;
        }

        bool? sameRater = parsed.GetValue(_rater) switch { Same => true, Different => false, _ => null };
        return StockOption.Over(BuiltIn.Knowledge(), parsed.GetValue(_aids), _terminal) is { } knowledge
            ? Run(knowledge, parsed.GetValue(_paths)!, new(parsed.GetValue(_from), parsed.GetValue(_to), sameRater, parsed.GetValue(_picture), parsed.GetValue(_format) == Formats.Json))
            : ExitCode.InputRefused;
    }

    private int Run(KnowledgeBase knowledge, string[] paths, Choices choices) =>
        OneProfile.With(_terminal, knowledge, paths[0], first => paths.Length == 1
            ? OfOne(choices, knowledge, first with { Sessions = first.InTime })
            : OneProfile.With(_terminal, knowledge, paths[1], second => second.Person == first.Person
                ? OfTwo(choices, knowledge, first with { Sessions = first.InTime }, second with { Sessions = second.InTime })
                : Usage($"{paths[0]} is the profile of {first.Person} and {paths[1]} that of {second.Person}, give two profiles of one person")));

    private int OfOne(Choices choices, KnowledgeBase knowledge, Profile profile)
    {
        // A visit with only a note can have changed nothing. It keeps its number and is compared only when it is asked for.
        int[] numbers = [.. Counting(profile)];
        int last = profile.Sessions.Length, to = choices.To ?? numbers.LastOrDefault(last), from = choices.From ?? numbers.LastOrDefault(n => n < to);
        return numbers.Length < 2 ? Usage("There is only one visit, so there is nothing to compare, give a second profile of this person")
            : from < 1 || to < 1 || from > last || to > last || from == to ? Usage($"There are visits 1 to {last}, give two different ones of these")
            : Compare(choices, knowledge, profile, from - 1, to - 1);
    }

    /// <summary>Numbers of the visits at which something was answered or tried.</summary>
    private static IEnumerable<int> Counting(Profile profile) => Enumerable.Range(1, profile.Sessions.Length).Where(n => !profile.Sessions[n - 1].IsNoteOnly);

    private int OfTwo(Choices choices, KnowledgeBase knowledge, Profile first, Profile second)
    {
        int from = choices.From ?? Counting(first).LastOrDefault(first.Sessions.Length), to = choices.To ?? Counting(second).LastOrDefault(second.Sessions.Length);
        if (from < 1 || from > first.Sessions.Length || to < 1 || to > second.Sessions.Length)
        {
            return Usage($"The first profile has visits 1 to {first.Sessions.Length} and the second 1 to {second.Sessions.Length}, give one of each");
        }

        var visits = new SameVisits(knowledge.Questions);
        var both = visits.Together(first, second);
        int earlier = visits.Find(both, first.Sessions[from - 1]), later = visits.Find(both, second.Sessions[to - 1]);
        return earlier == later ? Usage("Both profiles give the same visit, so there is nothing to compare, choose with --from and --to") : Compare(choices, knowledge, both, earlier, later);
    }

    private int Compare(Choices choices, KnowledgeBase knowledge, Profile profile, int from, int to)
    {
        if (from > to)
        {
            return Usage($"Visit {from + 1} of {IsoDay.Of(profile.Sessions[from].Date)} comes after visit {to + 1} of {IsoDay.Of(profile.Sessions[to].Date)}, give the earlier one first");
        }

        Visit At(int i) => new(i + 1, profile.Sessions[i].Date, profile.KnownAt(i).Answers);
        ImmutableArray<Visit> all = [.. Counting(profile).Select(n => At(n - 1))];

        bool? sameRater = choices.SameRater;
        using var notice = WorkNotice.Of(_terminal);
        var advisor = new Advisor(knowledge, AllCores.Advice);
        var comparison = new VisitComparer(knowledge, advisor).Compare(At(from), At(to), sameRater);
        string person = profile.Person;
        var trends = Trend.Of(knowledge, all, sameRater);
        bool asJson = choices.AsJson;
        string? firsts = asJson || all.Length < Trend.Fewest ? null : TrendText.Firsts(all.Select(v => (v, advisor.Advise(v.Answers))));
        notice?.Dispose();
        if (choices.Picture is { } picture && Draw(picture, person, trends) is { } fault)
        {
            return fault;
        }

        if (asJson)
        {
            WriteJson(knowledge, person, comparison, trends);
            return ExitCode.Good;
        }

        var lines = _terminal.Results;
        lines.Lines(new CompareText(knowledge).Lines(comparison, person, sameRater));
        if (firsts is not null)
        {
            lines.Line($"Over {all.Length} visits:");
            lines.Line(firsts);
            lines.Lines(trends.Select(TrendText.Line));
        }

        lines.Lines(ClinicText.Used(knowledge));

        return ExitCode.Good;
    }

    private int? Draw(string file, string person, ImmutableArray<Trend> trends)
    {
        if (trends.IsEmpty)
        {
            return Usage($"Nothing was measured at {Trend.Fewest} or more visits, so there is nothing to draw, leave --picture out");
        }

        if (OutputFile.Write(_terminal, file, TrendPicture.Svg(person, trends)) is not { } fault)
        {
            return null;
        }

        _terminal.Error.WriteLine(fault);
        return ExitCode.InputRefused;
    }

    private void WriteJson(KnowledgeBase knowledge, string person, Comparison comparison, ImmutableArray<Trend> trends)
    {
        _terminal.Output.WriteLine(JsonText.Of(JsonText.Indented, CompareJson.Of(person, comparison, trends, knowledge)));
    }

    private int Usage(string sentence)
    {
        _terminal.Error.WriteLine(sentence + ".");
        return ExitCode.WrongUsage;
    }

    /// <summary>What was chosen besides the profiles.</summary>
    private sealed record Choices(int? From = null, int? To = null, bool? SameRater = null, string? Picture = null, bool AsJson = false);
}
