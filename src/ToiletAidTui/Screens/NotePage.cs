using ToiletAid.App.Sessions;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>The free note of a visit: a new line is typed, or one of those that are there is taken up and changed.</summary>
/// <param name="note">The note.</param>
internal sealed class NotePage(SessionNote note) : Page
{
    internal const string PageName = "note";

    private readonly TypedLine _line = new();
    private string _error = string.Empty;
    private string _new = string.Empty;
    private int _at = note.Lines.Length;

    /// <summary>The note.</summary>
    internal SessionNote Note => note;

    internal override string Name => PageName;

    internal override IReadOnlyList<string> Lines => note.Lines.IsEmpty
        ? ["Note of this visit.", SessionNote.Advice]
        : ["Note of this visit.", .. note.Lines.Select((line, i) => $"{i + 1}. {line}")];

    internal override IEnumerable<string> AnswerForms => [$"{Prompt}: {_line.Text}"];

    internal override string Error => _error;

    internal override int Caret => Prompt.Length + 2 + _line.Caret;

    internal override bool IsTyping => true;

    private bool IsNew => _at >= note.Lines.Length;

    private string Prompt => (_error.Length == 0 ? string.Empty : "Not taken. ")
        + (IsNew ? $"Line {note.Lines.Length + 1}, Enter alone ends" : $"Line {_at + 1} of {note.Lines.Length}");

    /// <summary>The note of the visit in front of the others; says so where there is none.</summary>
    internal static void Open(Shell shell)
    {
        if ((shell.Current.OwnNote ?? shell.Visit?.Engine.Note) is not { } note)
        {
            shell.Show("A note belongs to a visit. Start one, or open a saved profile and choose the note there.");
            return;
        }

        shell.Push(new NotePage(note));
    }

    internal override IEnumerable<string> Help() =>
    [
        SessionNote.Advice,
        "Enter takes the line. Up and Down go to the lines that are there, to change one. An empty line is removed.",
        "It goes into the file with the answers and into the clinic note.",
    ];

    internal override void Press(Shell shell, KeyPress key)
    {
        switch (key.Action)
        {
            case KeyAction.Up or KeyAction.Down:
                Move(key.Action == KeyAction.Up ? _at - 1 : _at + 1);
                break;
            case KeyAction.Enter when IsNew && _line.Text.Trim().Length == 0:
                Back(shell);
                break;
            case KeyAction.Enter:
                Take(shell);
                break;
            default:
                _line.Edit(key);
                break;
        }
    }

    internal override void Back(Shell shell) => shell.Pop(Hint(shell));

    /// <summary>A visit of answers is saved at its end; a note alone has no other end than this.</summary>
    private static string Hint(Shell shell) =>
        shell.Visit is { IsUnsaved: true, Path: not null } visit && !shell.IsTrying && !visit.Engine.AnswersSoFar.Ids.Any()
            ? $"The note is not saved yet. {shell.Services.Keys.Words(KeyAction.Save)} saves it."
            : string.Empty;

    private void Move(int to)
    {
        if (IsNew)
        {
            _new = _line.Text;
        }

        _error = string.Empty;
        _at = Math.Clamp(to, 0, note.Lines.Length);
        _line.Put(IsNew ? _new : note.Lines[_at]);
    }

    private void Take(Shell shell)
    {
        bool wasNew = IsNew;
        var reply = wasNew ? note.Add(_line.Text) : note.Change(_at, _line.Text);
        _error = reply.Accepted ? string.Empty : $"Error: {reply.Text}";
        if (!reply.Accepted)
        {
            return;
        }

        _new = wasNew ? string.Empty : _new;
        _at = note.Lines.Length;
        _line.Put(_new);
        shell.Show(reply.Text);
    }
}
