using System.CommandLine;

namespace ToiletAidTui.Options;

/// <summary>Options that several commands share.</summary>
internal static class Formats
{
    internal const string Text = "text";
    internal const string Json = "json";
    internal const string Ndjson = "ndjson";
    internal const string Csv = "csv";
    internal const string Markdown = "markdown";
    internal const string Html = "html";
    internal const string Schema = "schema";

    /// <summary>--format with these choices; the first is the default.</summary>
    internal static Option<string> Option(params string[] choices)
    {
        var option = new Option<string>("--format")
        {
            HelpName = "FORM",
            Description = $"Form of the output: {string.Join(", ", choices)}.",
            DefaultValueFactory = _ => choices[0],
        };
        option.AcceptOnlyFromAmong(choices);
        return option;
    }

    /// <summary>--top, 1 or more.</summary>
    internal static Option<int> Top()
    {
        var option = new Option<int>("--top") { Description = "How many plans to give.", DefaultValueFactory = _ => 3 };
        option.Validators.Add(result => NumberRange.Check(result, 1, int.MaxValue, "--top"));
        return option;
    }
}
