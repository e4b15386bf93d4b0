namespace ToiletAidTui.Screens;

/// <summary>Text to read, and nothing to do but go back.</summary>
/// <param name="name">Name, for tests and captures.</param>
/// <param name="lines">The text.</param>
internal sealed class TextPage(string name, IReadOnlyList<string> lines) : Page
{
    internal override string Name => name;

    internal override IReadOnlyList<string> Lines => lines;

    internal override IEnumerable<string> AnswerForms => ["Enter goes back."];

    internal override void Press(Shell shell, KeyPress key)
    {
        if (key.Act == Act.Enter)
        {
            shell.Pop();
        }
    }
}
