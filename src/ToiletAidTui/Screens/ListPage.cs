namespace ToiletAidTui.Screens;

/// <summary>Text with a list of things to do.</summary>
/// <param name="name">Name, for tests and captures.</param>
/// <param name="title">What the screen is, one sentence.</param>
/// <param name="text">Further lines.</param>
/// <param name="entries">What can be done.</param>
/// <param name="numbered">True when the list is written out below the text.</param>
internal sealed class ListPage(string name, string title, IReadOnlyList<string> text, IReadOnlyList<Entry> entries, bool numbered = true) : Page
{
    private const string Nothing = "Nothing is chosen. ";

    private readonly ListCursor _place = new([.. entries.Select(e => e.Label)]);
    private string _notice = string.Empty;

    /// <summary>What can be done.</summary>
    internal IReadOnlyList<Entry> Entries => entries;

    internal override string Name => name;

    internal override IReadOnlyList<string> Lines { get; } =
    [
        title,
        .. text,
        .. numbered ? entries.Select((e, i) => $"{i + 1}. {e.Label}") : [],
    ];

    internal override IEnumerable<string> AnswerForms => _place.Index < 0
        ? [$"{_notice}Number 1 to {entries.Count}:"]
        : _place.IsByNumber ? [$"Choice {_place.Index + 1}: {entries[_place.Index].Label}"]
        : [$"Choice {_place.Index + 1} of {entries.Count}: {entries[_place.Index].Label}", $"Choice {_place.Index + 1}: {entries[_place.Index].Label}"];

    internal override void Press(Shell shell, KeyPress key)
    {
        string before = _notice;
        _notice = string.Empty;
        if (_place.Move(key) || key.Act != Act.Enter)
        {
            return;
        }

        if (_place.Index < 0)
        {
            _notice = before == Nothing ? "Still nothing is chosen. " : Nothing;
            return;
        }

        entries[_place.Index].Choose(shell);
    }
}
