using System.CommandLine;
using System.CommandLine.Parsing;
using ToiletAidTui.Commands.Help;

namespace ToiletAidTui.Commands;

/// <summary>Wrong usage as one sentence that can be read aloud.</summary>
internal static class UsageFault
{
    internal static string Sentence(ParseError error)
    {
        string message = string.Join(' ', error.Message.Split((char[])['\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        message = message.Replace("Must be one of:", "Use one of", StringComparison.Ordinal).Replace("' '", ", ", StringComparison.Ordinal).Replace("'", string.Empty, StringComparison.Ordinal);
        return $"{message.TrimEnd('.')}. Type toiletaid --help for the commands.";
    }

    /// <summary>A mistyped option would be taken for a path, and the fault be told of a file; null when there is none.</summary>
    internal static string? OptionAmongArguments(ParseResult parsed) =>
        parsed.Tokens.All(t => t.Type != TokenType.DoubleDash) && parsed.CommandResult.Tokens.FirstOrDefault(t => t.Value is ['-', _, ..]) is { } option
            ? $"There is no option {option.Value}. Type {HelpPage.Of(parsed.CommandResult.Command).Name} --help for those there are."
            : null;
}
