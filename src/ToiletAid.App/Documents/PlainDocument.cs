namespace ToiletAid.App.Documents;

/// <summary>A document as plain lines that a screen reader reads in order.</summary>
public static class PlainDocument
{
    private const string ToFill = "______________________________";

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Lines(Document document)
    {
        yield return document.Title;
        foreach (var block in document.Blocks)
        {
            if (block is Block.Heading)
            {
                yield return string.Empty;
            }

            foreach (string line in Of(block))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<string> Of(Block block) => block switch
    {
        Block.Heading h => [h.Text],
        Block.Paragraph p => [p.Text],
        Block.Points p => p.Items,
        Block.Facts f => f.Items.Select(i => $"{i.Label}: {(i.Value.Length == 0 ? ToFill : i.Value)}"),
        Block.Steps s => s.Items.Select((step, i) => $"{s.First + i}. {step}"),
        Block.Picture p => [$"{p.Drawing.Title}: {p.Drawing.Description}"],
        Block.SideBySide t => t.Rows.SelectMany(r => (IEnumerable<string>)[$"{r.Feature}. {r.Meaning}", .. t.Names.Zip(r.Says, (name, says) => $"{name} {says}")]),
        _ => throw new ArgumentException($"no lines are known for {block.GetType().Name}", nameof(block)),
    };
}
