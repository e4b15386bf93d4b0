using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ToiletAid.App.Files;
using ToiletAid.Core.Panels;

namespace ToiletAid.App.Panels;

/// <summary>Reads a filled form and says everything that is wrong with it.</summary>
/// <param name="cases">Codes of the cases, in order.</param>
/// <param name="kinds">Ids of the kinds, in order.</param>
public sealed class RatingReader(ImmutableArray<string> cases, ImmutableArray<string> kinds)
{
    private const int MostBytes = 4 * 1024 * 1024;
    private const int MostIssues = 100;
    private const int Columns = 3;

    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>Reads a file.</summary>
    /// <param name="path">Path of a regular file.</param>
    public Checked<Rater> Read(string path)
    {
        var read = RegularFile.Read(path, MostBytes, "form");
        return read.TryGet(out byte[]? bytes) ? Read(Path.GetFileNameWithoutExtension(path), Encoding.UTF8.GetString(JsonText.WithoutMark(bytes).Span)) : Checked<Rater>.Bad(read.Issues);
    }

    /// <summary>Reads text.</summary>
    /// <param name="name">What the rater is called.</param>
    /// <param name="text">The form: one row for each case and kind, parted by commas, semicolons or tabs as a spreadsheet saves them.</param>
    public Checked<Rater> Read(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var issues = new List<Issue>();
        var places = new Dictionary<(int Case, int Kind), int?>();
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        char separator = Separators.FirstOrDefault(s => lines[0].Contains(s, StringComparison.Ordinal), ',');
        if (!lines[0].Replace("\"", string.Empty, StringComparison.Ordinal).Split(separator).Select(c => c.Trim()).SequenceEqual(PanelFolder.Header.Split(',')))
        {
            issues.Add(new("no-header", "line 1", $"the first row should be {PanelFolder.Header}, use the form of the panel's folder"));
            return Checked<Rater>.Bad(issues);
        }

        for (int i = 1; i < lines.Length && issues.Count < MostIssues; i++)
        {
            if (lines[i].AsSpan().Trim(separator).Trim().IsEmpty)
            {
                continue;
            }

            string place = string.Create(CultureInfo.InvariantCulture, $"line {i + 1}");
            string[] cells = [.. lines[i].Split(separator).Select(c => c.Trim().Trim('"').Trim())];
            if (cells.Length != Columns)
            {
                issues.Add(new("columns", place, $"there are {cells.Length} columns instead of {Columns}, give case, kind and place"));
                continue;
            }

            Take(cells, place, places, issues);
        }

        if (issues.Count == 0)
        {
            issues.AddRange(Missing(places).Take(MostIssues));
        }

        return issues.Count > 0 ? Checked<Rater>.Bad(issues)
            : Checked<Rater>.Good(new(name, [.. cases.Select((_, c) => kinds.Select((_, k) => places[(c, k)]).ToImmutableArray())]));
    }

    private void Take(string[] cells, string place, Dictionary<(int Case, int Kind), int?> places, List<Issue> issues)
    {
        int number = cases.IndexOf(cells[0]), kind = kinds.IndexOf(cells[1]);
        int? rank = null;
        if (number < 0 || kind < 0)
        {
            string wrong = JsonWalker.Shown(number < 0 ? cells[0] : cells[1]);
            issues.Add(number < 0
                ? new("unknown-case", place, $"{wrong} is not a case of this panel, use the form of its folder")
                : new("unknown-id", place, $"{wrong} is not a kind of aid of this panel, use the form of its folder"));
            return;
        }

        if (cells[2].Length > 0)
        {
            if (!int.TryParse(cells[2], NumberStyles.None, CultureInfo.InvariantCulture, out int given) || given < 1 || given > kinds.Length)
            {
                issues.Add(new("place", place, $"{JsonWalker.Shown(cells[2])} is not a place, give a whole number from 1 to {kinds.Length.ToString(CultureInfo.InvariantCulture)} or leave it empty"));
                return;
            }

            rank = given;
        }

        if (!places.TryAdd((number, kind), rank))
        {
            issues.Add(new("twice", place, $"{cells[1]} of case {cells[0]} stands twice, keep one of them"));
        }
    }

    private IEnumerable<Issue> Missing(Dictionary<(int Case, int Kind), int?> places) =>
        from number in Enumerable.Range(0, cases.Length)
        from kind in Enumerable.Range(0, kinds.Length)
        where !places.ContainsKey((number, kind))
        select new Issue("missing-row", $"case {cases[number]}", $"{kinds[kind]} is missing, add its row, with an empty place where it does not suit");
}
