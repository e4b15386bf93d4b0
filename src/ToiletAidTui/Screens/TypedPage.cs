using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>A question whose answer is typed, as in the linear mode.</summary>
internal sealed class TypedPage : QuestionPage
{
    private readonly TypedLine _line = new();
    private readonly string _before = string.Empty;

    internal TypedPage(Visit visit, bool withTopic)
        : base(visit, withTopic)
    {
    }

    /// <summary>For a question that was shown as a list: its text stays.</summary>
    internal TypedPage(Visit visit, IReadOnlyList<string> lines)
        : base(visit, lines) =>
        _before = "Type it. ";

    internal override IEnumerable<string> AnswerForms => [$"{_before}{Prompt} {_line.Text}"];

    internal override int Caret => _before.Length + Prompt.Length + 1 + _line.Caret;

    internal override bool IsTyping => true;

    /// <inheritdoc/>
    protected override void Answering(Shell shell, KeyPress key)
    {
        if (_line.Edit(key) || key.Action != KeyAction.Enter)
        {
            return;
        }

        string text = _line.Take();
        if (text.Trim().Equals("unknown", StringComparison.OrdinalIgnoreCase))
        {
            Press(shell, new(KeyAction.Unknown));
            return;
        }

        Submit(shell, text);
    }
}
