using System.CommandLine;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Scores saved profiles.</summary>
internal static class RankCommand
{
    internal static Command Define(Terminal terminal)
    {
        var paths = new Argument<string[]>("PATH") { Description = "Profile, folder of profiles, or - for one profile a line on standard input.", Arity = ArgumentArity.OneOrMore };
        var format = Formats.Option(Formats.Text, Formats.Json, Formats.Ndjson, Formats.Csv);
        var top = new Option<int>("--top") { Description = "How many plans to give.", DefaultValueFactory = _ => 3 };
        var command = new Command("rank", "Rank the plans for saved profiles.") { paths, format, top };
        _ = terminal;
        return command;
    }
}
