namespace ToiletAidTui.Commands.Help;

/// <summary>A page of help as lines to be read aloud: what it does, examples, then the parts.</summary>
internal static class HelpText
{
    internal static IEnumerable<string> Lines(HelpPage page)
    {
        yield return $"{page.Name}. {page.Summary}";
        foreach (var (purpose, line) in page.Examples)
        {
            yield return $"To {purpose}: {line}";
        }

        foreach (string line in page.IsRoot ? Topics() : Commands(page))
        {
            yield return line;
        }

        foreach (var argument in page.Arguments)
        {
            yield return $"{argument.Name}: {HelpPage.Meaning(argument)}";
        }

        foreach (var option in page.Options)
        {
            yield return $"{$"{option.Name} {HelpPage.ValueName(option)}".TrimEnd()}: {HelpPage.Meaning(option)}";
        }

        yield return $"Exit codes: {string.Join(", ", page.ExitCodes.GroupBy(e => e.Brief).Select(g => $"{string.Join(" or ", g.Select(e => e.Code))} {g.Key}"))}.";
        if (page.Variables.Length > 0)
        {
            yield return $"Environment: {string.Join(", ", page.Variables.Select(v => v.Name))}. Their meaning: {HelpPage.Program} man --format text.";
        }
    }

    private static IEnumerable<string> Topics()
    {
        foreach (var topic in Notes.Topics)
        {
            yield return $"{topic.Heading}: {string.Join(", ", topic.Commands)}.";
        }

        yield return $"What a command does: its name and --help, such as {HelpPage.Program} rank --help.";
    }

    private static IEnumerable<string> Commands(HelpPage page) => page.Subcommands.Select(c => $"{page.Name} {c.Name}: {c.Description}");
}
