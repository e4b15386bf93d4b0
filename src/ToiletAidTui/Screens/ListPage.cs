using ToiletAid.App.Wording;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>Text with a list of things to do.</summary>
/// <param name="name">Name, for tests and captures.</param>
/// <param name="title">What the screen is, one sentence.</param>
/// <param name="text">Further lines.</param>
/// <param name="entries">What can be done.</param>
/// <param name="inSentence">True when the list is one sentence, so that it stands on one page with the text.</param>
internal sealed class ListPage(string name, string title, IReadOnlyList<string> text, IReadOnlyList<Entry> entries, bool inSentence = false) : Page
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
        .. inSentence ? [$"Choose {string.Join(", ", entries.Select((e, i) => $"{i + 1} {PlanText.Lower(e.Label)}"))}."] : entries.Select((e, i) => $"{i + 1}. {e.Label}"),
    ];

    /// <summary>What the answer line says before an entry is reached, without its colon; null for the numbers that can be typed.</summary>
    internal string? Place { get; init; }

    /// <summary>What going back does, where it does not go to the page before.</summary>
    internal Action<Shell>? GoesBack { get; init; }

    /// <summary>What is to be typed, without its colon: the line with the cursor of the linear mode.</summary>
    internal string Wanted => Place ?? $"Number 1 to {entries.Count}";

    internal override IEnumerable<string> AnswerForms => _place.Index < 0
        ? [$"{_notice}{Wanted}:"]
        : _place.Forms(entries[_place.Index].Label);

    internal override void Press(Shell shell, KeyPress key)
    {
        string before = _notice;
        _notice = string.Empty;
        if (key is { Action: KeyAction.Text, Text.Length: > 0 } && entries.FirstOrDefault(e => e.Letter.Equals(key.Text, StringComparison.OrdinalIgnoreCase)) is { } lettered)
        {
            lettered.Choose(shell);
            return;
        }

        if (_place.Move(key))
        {
            return;
        }

        if (key.Action != KeyAction.Enter)
        {
            string refused = $"{key.Text} is not 1 to {entries.Count}. ";
            _notice = !ListCursor.IsDigit(key) ? string.Empty : before == refused ? $"Again, {refused}" : refused;
            _place.Index = _notice.Length > 0 ? -1 : _place.Index;
            return;
        }

        if (_place.Index < 0)
        {
            _notice = before == Nothing ? "Still nothing is chosen. " : Nothing;
            return;
        }

        entries[_place.Index].Choose(shell);
    }

    internal override void Back(Shell shell)
    {
        if (GoesBack is { } back)
        {
            back(shell);
            return;
        }

        base.Back(shell);
    }
}
