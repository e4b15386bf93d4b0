using System.Text;
using ToiletAid.App.Typed;

namespace ToiletAid.App.Documents;

/// <summary>A document as Markdown.</summary>
public static class MarkdownDocument
{
    private const string ToFill = @"\_\_\_\_\_\_\_\_\_\_";

    /// <summary>The text, with a last line end.</summary>
    public static string Write(Document document)
    {
        var text = new StringBuilder($"# {Escape(document.Title)}\n");
        foreach (var block in document.Blocks)
        {
            text.Append('\n').AppendJoin('\n', Of(block)).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<string> Of(Block block) => block switch
    {
        Block.Heading h => [$"{new string('#', h.Level)} {Escape(h.Text)}"],
        Block.Paragraph { Urgent: true } p => [$"**{Escape(p.Text)}**"],
        Block.Paragraph p => [Escape(p.Text)],
        Block.Points p => p.Items.Select(i => $"- {Escape(i)}"),
        Block.Facts f => f.Items.Select(i => $"- {Escape(i.Label)}: {(i.Value.Length == 0 ? ToFill : Escape(i.Value))}"),
        Block.Steps s => s.Items.Select((step, i) => $"{s.First + i}. {Escape(step)}"),
        Block.Picture p => [Escape($"{p.Drawing.Title}: {p.Drawing.Description}")],
        Block.SideBySide t =>
        [
            Row(["Feature", "What it means", .. t.Names]),
            Row(Enumerable.Repeat("---", t.Names.Length + 2)),
            .. t.Rows.Select(r => Row([r.Feature, r.Meaning, .. r.Says.Select(Spoken.Capital)])),
        ],
        _ => throw new ArgumentException($"no Markdown is known for {block.GetType().Name}", nameof(block)),
    };

    private static string Row(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(c => c == "---" ? c : Escape(c)))} |";

    /// <summary>Our texts come from a clinic's own catalogue and from the therapist too, so what Markdown would take for a mark is escaped.</summary>
    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        int digits = text.TakeWhile(char.IsAsciiDigit).Count();
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];

            // At its start a text may also look like a point, a line or a numbered step.
            bool isMark = c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' or '|' or '&' or '~'
                || (i == 0 && (c is '-' or '+' or '=')) || (i > 0 && i == digits && (c is '.' or ')'));
            escaped.Append(isMark ? "\\" : string.Empty).Append(c);
        }

        return escaped.ToString();
    }
}
