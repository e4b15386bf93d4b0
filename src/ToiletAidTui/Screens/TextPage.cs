using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>Text to read, and nothing to do but go back.</summary>
/// <param name="name">Name, for tests and captures.</param>
/// <param name="lines">The text.</param>
/// <param name="isDetail">True for a detail of the page behind: coming back says that page's answer line only, and the text stays.</param>
internal sealed class TextPage(string name, IReadOnlyList<string> lines, bool isDetail = false) : Page
{
    internal override string Name => name;

    internal override IReadOnlyList<string> Lines => lines;

    internal override IEnumerable<string> AnswerForms => ["Enter goes back."];

    internal override void Press(Shell shell, KeyPress key)
    {
        if (key.Action == KeyAction.Enter)
        {
            Back(shell);
        }
    }

    internal override void Back(Shell shell)
    {
        if (isDetail)
        {
            shell.PopQuietly();
            return;
        }

        base.Back(shell);
    }
}
