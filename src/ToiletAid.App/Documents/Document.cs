using System.Collections.Immutable;
using ToiletAid.App.Pictures;

namespace ToiletAid.App.Documents;

/// <summary>A document, ready to be written in any form.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Language">Language tag, such as en-GB.</param>
/// <param name="LargePrint">True for the sheet, which is read by people with low sight.</param>
/// <param name="Blocks">Its parts in order.</param>
public sealed record Document(string Title, string Language, bool LargePrint, ImmutableArray<Block> Blocks)
{
    /// <summary>What stands at the foot of every printed page beside its number; empty for none.</summary>
    public string Footer { get; init; } = string.Empty;

    /// <summary>The same document in the words, units and spelling of a language.</summary>
    public Document In(English english) => this with
    {
        Title = english.Say(Title),
        Language = english.Tag,
        Blocks = [.. Blocks.Select(b => In(b, english))],
    };

    private static Drawing In(Drawing drawing, English english) =>
        drawing with { Title = english.Say(drawing.Title), Description = english.Say(drawing.Description) };

    private static Block In(Block block, English english) => block switch
    {
        Block.Heading h => h with { Text = english.Say(h.Text) },
        Block.Paragraph p => p with { Text = english.Say(p.Text) },
        Block.Points { AsTyped: true } => block,
        Block.Points p => p with { Items = [.. p.Items.Select(english.Say)] },
        Block.Facts f => f with { Items = [.. f.Items.Select(i => i with { Label = english.Say(i.Label), Value = english.Say(i.Value) })] },
        Block.Steps s => s with { Items = [.. s.Items.Select(english.Say)], Drawings = [.. s.Drawings.Select(d => d is null ? null : In(d, english))] },
        Block.Picture p => new Block.Picture(In(p.Drawing, english)),
        Block.SideBySide t => new Block.SideBySide(
            [.. t.Names.Select(english.Say)],
            [.. t.Rows.Select(r => new SideBySideRow(english.Say(r.Feature), english.Say(r.Meaning), [.. r.Says.Select(english.Say)]))]),
        _ => throw new ArgumentException($"no words are known for {block.GetType().Name}", nameof(block)),
    };
}
