using System.CommandLine;
using System.Globalization;
using System.Reflection;
using System.Text;
using ToiletAid.App.Files;
using ToiletAidTui.Commands.Help;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Commands.Manual;

/// <summary>The manual as a page for man, in the macros of man(7).</summary>
internal static class ManualPage
{
    private const int LongestLine = 78;

    internal static string Of(RootCommand root)
    {
        var page = new StringBuilder();
        var first = HelpPage.Of(root);
        page.Append(CultureInfo.InvariantCulture, $".TH TOILETAID 1 \"{Day}\" \"{HelpPage.Program} {KnowledgeVersion.Program}\"\n");
        page.Append(CultureInfo.InvariantCulture, $".SH NAME\n{HelpPage.Program} \\-\n{Text(char.ToLowerInvariant(first.Summary[0]) + first.Summary[1..].TrimEnd('.'))}\n");
        page.Append(CultureInfo.InvariantCulture, $".SH SYNOPSIS\n.B {HelpPage.Program}\n.RI [ command ]\n.RI [ option ...]\n");
        page.Append(".SH DESCRIPTION\nWithout a command it begins with a menu.\n.PP\nIt supports trained staff and is not a diagnosis.\nThe therapist decides.\n");
        Examples(page, first);
        page.Append(".SH OPTIONS\n");
        Options(page, first);
        page.Append(".SH COMMANDS\n");
        foreach (var command in HelpPage.All(root).Where(p => !p.IsRoot))
        {
            page.Append(CultureInfo.InvariantCulture, $".SS {Escaped(command.Name)}\n{Text(command.Summary)}\n");
            Examples(page, command);
            foreach (var argument in command.Arguments)
            {
                Item(page, $"\\fI{Escaped(argument.Name)}\\fR", HelpPage.Meaning(argument));
            }

            Options(page, command);
        }

        page.Append(".SH EXIT STATUS\n");
        foreach (var (code, _, meaning) in ExitCode.All)
        {
            Item(page, code.ToString(CultureInfo.InvariantCulture), $"{char.ToUpperInvariant(meaning[0])}{meaning[1..]}.");
        }

        page.Append(".SH ENVIRONMENT\n");
        foreach (var (name, meaning) in EnvironmentVariables.All)
        {
            Item(page, $"\\fB{Escaped(name)}\\fR", meaning);
        }

        foreach (var (heading, sentences) in KeyTopics.All())
        {
            page.Append(CultureInfo.InvariantCulture, $".SH {heading.ToUpperInvariant()}\n");
            foreach (string sentence in sentences)
            {
                if (sentence.Split(": ", 2) is [var head, var meaning])
                {
                    Item(page, Escaped(head), meaning);
                    continue;
                }

                page.Append(CultureInfo.InvariantCulture, $".PP\n{Text(sentence)}\n");
            }
        }

        return page.ToString();
    }

    /// <summary>The day that stands beside the version in the build: not today, so that a version always gives the same page.</summary>
    private static string Day => typeof(ManualPage).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "VersionDate").Value!;

    private static void Examples(StringBuilder page, HelpPage of)
    {
        foreach (var (purpose, line) in of.Examples)
        {
            page.Append(CultureInfo.InvariantCulture, $".PP\n{Text($"To {purpose}:")}\n.PP\n.RS 4\n.EX\n{Escaped(line)}\n.EE\n.RE\n");
        }
    }

    private static void Options(StringBuilder page, HelpPage of)
    {
        foreach (var option in of.Options)
        {
            string value = HelpPage.ValueName(option);
            Item(page, $"\\fB{Escaped(option.Name)}\\fR{(value.Length > 0 ? $" \\fI{Escaped(value)}\\fR" : string.Empty)}", HelpPage.Meaning(option));
        }
    }

    private static void Item(StringBuilder page, string head, string text) => page.Append(CultureInfo.InvariantCulture, $".TP\n{head}\n{Text(text)}\n");

    /// <summary>Each sentence on lines of its own, as the format wants it; a line that begins with a dot would be a request.</summary>
    private static string Text(string text) => string.Join('\n', Escaped(text)
        .Replace(". ", ".\n", StringComparison.Ordinal)
        .Split('\n')
        .SelectMany(sentence => WordWrap.Rows(sentence, LongestLine))
        .Select(l => l.StartsWith('.') || l.StartsWith('\'') ? $"\\&{l}" : l));

    private static string Escaped(string text) => text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
}
