using System.CommandLine;
using System.Net;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>How the program works with speech, braille and large print; as lines or as a plain page.</summary>
internal static class AccessibilityCommand
{
    internal static Command Define(Terminal terminal)
    {
        var format = Formats.Option(Formats.Text, Formats.Html);
        var command = new Command("accessibility", "How the program works with speech, braille and large print.") { format };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(format) == Formats.Html)
            {
                Page(terminal.Output);
                return ExitCode.Good;
            }

            var lines = terminal.Results;
            foreach (var (heading, sentences) in Topics)
            {
                lines.Line($"{heading}:");
                lines.Lines(sentences);
            }

            return ExitCode.Good;
        });
        return command;
    }

    private static readonly (string Heading, string[] Sentences)[] Topics =
    [
        ("Two modes",
        [
            "Linear mode asks and answers line by line and redraws nothing.",
            "Full screen shows a whole question at once, and its last line is the answer line.",
            "Both modes ask the same questions, give the same result and write the same files.",
            "F2 or Control P goes from full screen to linear. The word screen goes back.",
        ]),
        ("Choosing a mode",
        [
            "The options --linear and --full-screen choose it for one run.",
            $"{EnvironmentVariables.Mode} in the environment takes linear or full-screen.",
            $"{EnvironmentVariables.Accessible} in the environment chooses linear, unless it is 0, false or no.",
            "On Windows linear is chosen while a screen reader runs.",
            "The command toiletaid settings --set mode=linear keeps the choice.",
        ]),
        ("Speech",
        [
            "In full screen Up and Down change the answer line and nothing else, so that one key says one thing.",
            "A new screen is said once from its top. Control Y says it again.",
            "Nothing is written until a key is pressed.",
        ]),
        ("Braille",
        [
            "The cursor is on the answer line, which makes sense by itself in 40 cells.",
            "When an answer is not accepted, the line with the cursor says so.",
        ]),
        ("Sight",
        [
            "Colours and size are those of the terminal. The setting contrast=high gives white on black.",
            $"Nothing is shown by colour alone. {EnvironmentVariables.NoColour} is honoured.",
            "The smallest size is 40 columns and 12 rows. Nothing scrolls sideways.",
        ]),
        .. KeyTopics.All(),
    ];

    private static void Page(TextWriter output)
    {
        output.WriteLine("<!DOCTYPE html>\n<html lang=\"en\">\n<head><meta charset=\"utf-8\"><title>toiletaid: accessibility</title></head>\n<body>\n<h1>toiletaid: accessibility</h1>");
        foreach (var (heading, sentences) in Topics)
        {
            output.WriteLine($"<h2>{WebUtility.HtmlEncode(heading)}</h2>\n<ul>");
            foreach (string sentence in sentences)
            {
                output.WriteLine($"<li>{WebUtility.HtmlEncode(sentence)}</li>");
            }

            output.WriteLine("</ul>");
        }

        output.WriteLine("</body>\n</html>");
    }
}
