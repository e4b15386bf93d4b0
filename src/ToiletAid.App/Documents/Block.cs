using System.Collections.Immutable;
using ToiletAid.App.Pictures;

namespace ToiletAid.App.Documents;

/// <summary>A part of a document, without any look: every form of output writes the same parts.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>A heading under the title.</summary>
    /// <param name="Text">Its words.</param>
    /// <param name="Level">2 for a section, 3 for a part of one, 4 for a part of that.</param>
    /// <param name="OnNewPage">True where a printed page begins with it.</param>
    public sealed record Heading(string Text, int Level = 2, bool OnNewPage = false) : Block;

    /// <summary>Sentences that belong together.</summary>
    /// <param name="Text">The sentences.</param>
    /// <param name="Urgent">True when they must not be missed.</param>
    public sealed record Paragraph(string Text, bool Urgent = false) : Block;

    /// <summary>Points without an order.</summary>
    /// <param name="Items">The points.</param>
    /// <param name="AsTyped">True for what a person typed: it stays in their words and units.</param>
    /// <param name="InRow">True where print may set several beside each other.</param>
    public sealed record Points(ImmutableArray<string> Items, bool AsTyped = false, bool InRow = false) : Block;

    /// <summary>Labels with what belongs to them.</summary>
    /// <param name="Items">The pairs; an empty value is a line to fill in.</param>
    /// <param name="InRow">True where print may set several beside each other.</param>
    public sealed record Facts(ImmutableArray<Fact> Items, bool InRow = false) : Block;

    /// <summary>A drawing by itself.</summary>
    /// <param name="Drawing">The drawing with its words.</param>
    public sealed record Picture(Drawing Drawing) : Block;

    /// <summary>Things beside each other, feature by feature. To the ear each is a sentence of its own; print has a table.</summary>
    /// <param name="Names">The things, each as the subject of a sentence.</param>
    /// <param name="Rows">The features.</param>
    public sealed record SideBySide(ImmutableArray<string> Names, ImmutableArray<SideBySideRow> Rows) : Block;

    /// <summary>Steps in order, numbered on from <paramref name="First"/>.</summary>
    /// <param name="First">Number of the first step.</param>
    /// <param name="Items">The steps.</param>
    /// <param name="Drawings">A drawing for each step, null for none; empty where no step has one.</param>
    public sealed record Steps(int First, ImmutableArray<string> Items, ImmutableArray<Drawing?> Drawings) : Block
    {
        /// <summary>Steps without drawings.</summary>
        /// <param name="first">Number of the first step.</param>
        /// <param name="items">The steps.</param>
        public Steps(int first, ImmutableArray<string> items)
            : this(first, items, [])
        {
        }

        /// <summary>True where the drawings are large and the words stand under them.</summary>
        public bool Large { get; init; }
    }
}
