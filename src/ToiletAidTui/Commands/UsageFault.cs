using System.CommandLine.Parsing;

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
}
