using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using System.Globalization;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Help;

/// <summary>All that is said of one command: its definition and the notes on it, put together once for every form in which it is shown.</summary>
internal sealed class HelpPage
{
    internal const string Program = "toiletaid";

    private readonly Command _command;
    private readonly CommandNotes _notes;
    private readonly string _words;

    private HelpPage(Command command)
    {
        _command = command;
        _words = string.Join(' ', Line(command).Skip(1).Select(c => c.Name));
        _notes = Notes.All[_words];
    }

    /// <summary>The page of a command.</summary>
    internal static HelpPage Of(Command command) => new(command);

    /// <summary>The page of a command and those of all below it.</summary>
    internal static IEnumerable<HelpPage> All(Command command) => command.Subcommands.SelectMany(All).Prepend(new(command));

    /// <summary>The whole name.</summary>
    internal string Name => _words.Length == 0 ? Program : $"{Program} {_words}";

    internal bool IsRoot => _words.Length == 0;

    internal string Summary => _command.Description!;

    internal IEnumerable<(string Purpose, string Line)> Examples => _notes.Examples.Select(e => (e.Purpose, e.Line.Length == 0 ? Program : $"{Program} {e.Line}"));

    internal IEnumerable<Command> Subcommands => _command.Subcommands;

    internal IEnumerable<Argument> Arguments => _command.Arguments;

    /// <summary>Its options; those of the whole program only where they matter.</summary>
    internal IEnumerable<Option> Options
    {
        get
        {
            var own = _command.Options.Where(o => !o.Recursive && o is not (HelpOption or VersionOption));
            return IsRoot ? own.Concat(_command.Options.Where(o => o.Recursive || o is VersionOption))
                : _notes.TakesPassphrase ? own.Concat(Line(_command).First().Options.Where(o => o.Recursive && o is not HelpOption))
                : own;
        }
    }

    internal ImmutableArray<(int Code, string Brief, string Meaning)> ExitCodes => [.. ExitCode.All.Where(e => e.Code == ExitCode.OurFault || _notes.ExitCodes.Contains(e.Code))];

    internal ImmutableArray<(string Name, string Meaning)> Variables => [.. EnvironmentVariables.All.Where(v => _notes.Variables.Contains(v.Name))];

    /// <summary>What stands for the value of an option; empty when it takes none.</summary>
    internal static string ValueName(Option option) =>
        option.Arity.MaximumNumberOfValues == 0 || option.ValueType == typeof(bool) || option is HelpOption or VersionOption ? string.Empty
        : option.HelpName is { Length: > 0 } name ? name
        : IsNumber(option.ValueType) ? "NUMBER" : "WORD";

    /// <summary>What an option does, and what holds without it.</summary>
    internal static string Meaning(Option option)
    {
        string said = option is VersionOption ? "Show the version." : option is HelpOption ? "This help, or that of a command." : option.Description!;
        return option.Required ? $"{said} Required."
            : ValueName(option).Length > 0 && option.HasDefaultValue && option.GetDefaultValue() is { } value ? $"{said} {Convert.ToString(value, CultureInfo.InvariantCulture)} if left out."
            : said;
    }

    /// <summary>What an argument is, and whether there may be more of them.</summary>
    internal static string Meaning(Argument argument) =>
        argument.Arity.MaximumNumberOfValues > 2 ? $"{argument.Description} More than one may be given." : argument.Description!;

    private static bool IsNumber(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is { IsPrimitive: true };

    private static IEnumerable<Command> Line(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? Line(parent).Append(command) : [command];
}
