using System.Text;

namespace ToiletAidTui.Host;

/// <summary>Breaks lines between words.</summary>
internal static class WordWrap
{
    /// <summary>The lines of a text in a terminal; whole where it is too narrow for that, or nobody looks.</summary>
    /// <param name="text">One line.</param>
    /// <param name="width">Characters in a line of the terminal; 0 for no wrapping.</param>
    internal static IEnumerable<string> Lines(string text, int width) => width < 20 || text.Length < width ? [text] : Rows(text, width - 1);

    /// <summary>The rows of <paramref name="text"/>; a word that is longer than a row stays whole on a row of its own.</summary>
    /// <param name="text">One line.</param>
    /// <param name="longest">Most characters in a row.</param>
    internal static IEnumerable<string> Rows(string text, int longest)
    {
        var row = new StringBuilder();
        foreach (string word in text.Split(' '))
        {
            if (row.Length > 0 && row.Length + 1 + word.Length > longest)
            {
                yield return row.ToString();
                row.Clear();
            }

            row.Append(row.Length > 0 ? " " : string.Empty).Append(word);
        }

        yield return row.ToString();
    }
}
