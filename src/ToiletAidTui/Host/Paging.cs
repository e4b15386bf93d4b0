namespace ToiletAidTui.Host;

/// <summary>Breaks text that is longer than a page between sentences, and inside a sentence only where it is longer than a page itself.</summary>
internal static class Paging
{
    /// <summary>What ends in so few characters, such as the number of an option, never stands alone at the foot of a page.</summary>
    private const int Shortest = 12;

    /// <summary>Lays lines out on pages.</summary>
    /// <param name="lines">The lines, of one or several sentences.</param>
    /// <param name="wrap">The rows of a text.</param>
    /// <param name="room">Rows of a page, 1 or more.</param>
    internal static List<List<string>> Pages(IEnumerable<string> lines, Func<string, IEnumerable<string>> wrap, int room)
    {
        List<List<string>> pages = [[]];
        foreach (string line in lines)
        {
            foreach (var (piece, i) in Pieces(line, wrap, room - pages[^1].Count, room).Select((p, i) => (p, i)))
            {
                if (i > 0)
                {
                    pages.Add([]);
                }

                pages[^1].AddRange(piece);
            }
        }

        return pages;
    }

    /// <summary>The rows of a line in pieces with a page break between each two. The first is empty where nothing of it fits on the page that is begun.</summary>
    /// <param name="line">One line.</param>
    /// <param name="wrap">The rows of a text.</param>
    /// <param name="left">Rows that are left on the page that is begun.</param>
    /// <param name="room">Rows of a page.</param>
    internal static List<string[]> Pieces(string line, Func<string, IEnumerable<string>> wrap, int left, int room)
    {
        string[] all = [.. wrap(line)];
        if (all.Length <= left)
        {
            return [all];
        }

        var pieces = new List<string[]>();
        string[] held = [];
        string text = string.Empty;
        foreach (string sentence in Sentences(line))
        {
            string longer = text.Length == 0 ? sentence : $"{text} {sentence}";
            string[] rows = [.. wrap(longer)];
            if (rows.Length > left)
            {
                pieces.Add(held);
                left = room;
                (longer, rows) = (sentence, [.. wrap(sentence)]);
                while (rows.Length > left)
                {
                    pieces.Add(rows[..left]);
                    rows = rows[left..];
                    longer = string.Join(' ', rows);
                }
            }

            (text, held) = (longer, rows);
        }

        pieces.Add(held);
        return pieces;
    }

    private static IEnumerable<string> Sentences(string line)
    {
        int from = 0;
        for (int i = 0; i < line.Length - 1; i++)
        {
            bool ends = line[i] is '.' or '?' or '!' && line[i + 1] == ' ' && i - from >= Shortest;
            if (ends && (i + 2 >= line.Length || !char.IsLower(line, i + 2)))
            {
                yield return line[from..(i + 1)];
                from = i + 2;
            }
        }

        yield return line[from..];
    }
}
