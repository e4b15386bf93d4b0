using ToiletAid.App.Documents;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Documents in the form that was asked for, and where they go.</summary>
internal static class DocumentOutput
{
    /// <summary>A document as text, Markdown or HTML.</summary>
    internal static string Text(Terminal terminal, Document document, string format) => format switch
    {
        Formats.Html => HtmlDocument.Write(document),
        Formats.Markdown => MarkdownDocument.Write(document),
        _ => Plain(terminal, document),
    };

    /// <summary>Writes a text to a file, or says it where none is named.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    internal static int Write(Terminal terminal, string? path, string text)
    {
        if (path is null)
        {
            terminal.Output.Write(text);
            return ExitCode.Good;
        }

        if (OutputFile.Write(terminal, path, text) is not { } fault)
        {
            return ExitCode.Good;
        }

        terminal.Error.WriteLine(fault);
        return ExitCode.InputRefused;
    }

    private static string Plain(Terminal terminal, Document document)
    {
        using var text = new StringWriter { NewLine = "\n" };
        new SpeechLines(text, terminal.OutputIsTerminal ? terminal.Width : 0).Lines(PlainDocument.Lines(document));
        return text.ToString();
    }
}
