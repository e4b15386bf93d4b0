using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Terminals;

/// <summary>No more rows at once than the screen has, and breaks between sentences only.</summary>
public sealed class PagingTests
{
    private static readonly string[] Text = [.. Enumerable.Range(1, 9).Select(i => $"{i}. One thing is said here. Another one follows it, and is a little longer. A third ends the line.")];

    [Theory]
    [InlineData(39, 5)]
    [InlineData(79, 4)]
    [InlineData(199, 2)]
    public void Every_page_fits_and_ends_with_a_sentence(int width, int room)
    {
        var pages = Paging.Pages(Text, t => WordWrap.Rows(t, width), room);

        Assert.True(pages.Count > 1);
        Assert.All(pages, p => Assert.InRange(p.Count, 1, room));
        Assert.All(pages, p => Assert.EndsWith(".", p[^1], StringComparison.Ordinal));
        Assert.Equal(string.Join(' ', Text), string.Join(' ', pages.SelectMany(p => p)));
    }

    [Fact]
    public void A_sentence_that_is_longer_than_a_page_is_broken_between_rows_and_nothing_is_lost()
    {
        string line = string.Join(' ', Enumerable.Repeat("word", 60));

        var pages = Paging.Pages(["Before.", line, "After."], t => WordWrap.Rows(t, 39), 3);

        Assert.All(pages, p => Assert.InRange(p.Count, 1, 3));
        Assert.Equal($"Before. {line} After.", string.Join(' ', pages.SelectMany(p => p)));
    }

    [Fact]
    public void Linear_waits_at_the_end_of_a_page_and_takes_what_else_is_typed_there_as_the_next_answer()
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var typed = new MemoryStream("\nsecond\n"u8.ToArray());
        var input = new LineReader(typed);
        var lines = new SpeechLines(said, 80).Paged(6, input);

        lines.Lines(Enumerable.Range(1, 20).Select(i => $"Line {i}."));
        string? answer = lines.Ask("Answer: ", input, echoesTyping: true);

        Assert.Equal("second", answer);
        Assert.Equal(8, said.ToString().Split("Line ").Length - 1);
        Assert.Equal(["Line 4.\nEnd of page 1.", "Line 8.\nEnd of page 2."], said.ToString().Split(" Enter for more, or stop: ")[..^1].Select(p => p[p.LastIndexOf("Line", StringComparison.Ordinal)..]));
        lines.Lines(Enumerable.Range(1, 5).Select(i => $"Line {i}."));
        Assert.EndsWith("End of page 1. Enter for more, or stop: ", said.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void No_row_comes_twice_on_the_screen_where_the_words_can_be_broken_elsewhere()
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var typed = new MemoryStream();
        var lines = new SpeechLines(said, 39).Paged(24, new(typed));

        lines.Lines(["The first of them suits many of these people, for 12 of 100 others.", "The second of them suits many of the people, for 12 of 100 others."]);

        string[] rows = said.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(rows.Distinct(StringComparer.Ordinal), rows);
        Assert.All(rows, r => Assert.InRange(r.Length, 1, 39));
    }
}
