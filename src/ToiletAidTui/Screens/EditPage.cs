using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>Text with one line to type.</summary>
/// <param name="name">Name, for tests and captures.</param>
/// <param name="lines">The text.</param>
/// <param name="prompt">What is to be typed, without its colon.</param>
/// <param name="retry">The same after it was not taken.</param>
/// <param name="take">Takes what was typed; gives why not as one sentence, or null.</param>
/// <param name="isHidden">True where what is typed is not shown.</param>
internal sealed class EditPage(string name, IReadOnlyList<string> lines, string prompt, string retry, Func<Shell, string, string?> take, bool isHidden = false) : Page
{
    private readonly TypedLine _line = new();
    private string _error = string.Empty;

    internal override string Name => name;

    internal override IReadOnlyList<string> Lines => lines;

    internal override IEnumerable<string> AnswerForms => [isHidden ? $"{Prompt}:" : $"{Prompt}: {_line.Text}"];

    internal override string Error => _error;

    internal override int Caret => Prompt.Length + 2 + (isHidden ? 0 : _line.Caret);

    /// <summary>True where what is typed is not shown.</summary>
    internal bool IsHidden => isHidden;

    /// <summary>What is to be typed, without its colon.</summary>
    internal string Prompt => _error.Length == 0 ? prompt : retry;

    internal override bool IsTyping => true;

    internal override void Press(Shell shell, KeyPress key)
    {
        if (_line.Edit(key) || key.Action != KeyAction.Enter)
        {
            return;
        }

        Take(shell, _line.Take());
    }

    /// <summary>Hands in what was typed; false when it was not taken, and then <see cref="Error"/> says why.</summary>
    internal bool Take(Shell shell, string typed)
    {
        string? fault = take(shell, isHidden ? typed : typed.Trim());
        _error = fault is null ? string.Empty : $"Error: {fault}";
        return fault is null;
    }
}
