using System.Collections.Immutable;
using ToiletAid.App.Sessions;
using ToiletAid.App.Trials;
using ToiletAid.App.Wording;
using ToiletAidTui.Keys;

namespace ToiletAidTui.Screens;

/// <summary>
/// How a plan was tried. Each answer is typed, as in the linear mode, or reached with Up and Down. Digits are always typed and go to no
/// entry: the codes of the levels run the other way than their places.
/// </summary>
/// <param name="recording">What is asked.</param>
internal sealed class TrialPage(TrialRecording recording) : Page
{
    internal const string PageName = "trial";

    private readonly TypedLine _line = new();
    private readonly SortedSet<int> _chosen = [];
    private ListCursor _place = Cursor(recording.Interview);
    private string _error = string.Empty;

    /// <summary>What is asked and saved.</summary>
    internal TrialRecording Recording => recording;

    /// <summary>True while something was answered that is not in the file.</summary>
    internal bool IsUnsaved => !Interview.IsDone && Interview.Position > 1;

    internal override string Name => PageName;

    internal override IReadOnlyList<string> Lines => Interview.TakesMany ? [.. Interview.Asking(), "Space switches between yes and no. 0 means none."] : [.. Interview.Asking()];

    internal override IEnumerable<string> AnswerForms => _place.Index < 0 ? [$"{Prompt}: {_line.Text}"] : ChoiceForms;

    internal override string Error => _error;

    internal override int Caret => _place.Index < 0 ? Prompt.Length + 2 + _line.Caret : 0;

    internal override bool IsTyping => _place.Index < 0;

    internal override SessionNote? OwnNote => recording.Note;

    private TrialInterview Interview => recording.Interview;

    private ImmutableArray<TrialChoice> Choices => Interview.Choices;

    private string Prompt => $"{(_error.Length == 0 ? string.Empty : "Not taken. ")}{Interview.Position}. {Interview.Wanted}";

    private string[] ChoiceForms
    {
        get
        {
            var (label, brief) = (Choices[_place.Index].Label, Choices[_place.Index].Brief);
            string said = Interview.TakesMany ? $"{(_chosen.Contains(_place.Index) ? "Yes" : "No")}: {PlanText.Lower(label)}" : label;
            return [.. _place.Forms(said), .. Interview.TakesMany ? (string[])[] : _place.Forms(brief)];
        }
    }

    internal override IEnumerable<string> Help() =>
    [
        .. Interview.Help(),
        "Type the answer, or go to it with Up and Down, then Enter. A digit is typed and goes to no entry.",
        "Going back from the first question leaves the trial and saves nothing.",
    ];

    internal override void Press(Shell shell, KeyPress key)
    {
        switch (key.Action)
        {
            case KeyAction.Unknown:
                Submit(shell, "unknown");
                break;
            case KeyAction.Enter:
                Enter(shell);
                break;
            case KeyAction.Text when key.Text == " " && _place.Index >= 0:
                Toggle();
                break;
            case KeyAction.Up or KeyAction.Down or KeyAction.First or KeyAction.Last when Choices.Length > 0 && (_line.Text.Length == 0 || key.Action is KeyAction.Up or KeyAction.Down):
                _line.Take();
                _error = string.Empty;
                _place.Move(key);
                break;
            default:
                Type(key);
                break;
        }
    }

    internal override void Back(Shell shell)
    {
        if (!Interview.Back())
        {
            shell.Pop("Nothing was saved.");
            return;
        }

        Anew();
        shell.Show("Going back.");
    }

    /// <summary>Begins the answer of the step that is asked now; in linear mode others were answered meanwhile.</summary>
    internal void Anew()
    {
        _line.Take();
        _chosen.Clear();
        _error = string.Empty;
        _place = Cursor(Interview);
    }

    private static ListCursor Cursor(TrialInterview interview) => new([.. interview.Choices.Select(c => c.Label)]);

    private void Toggle()
    {
        if (Interview.TakesMany && !_chosen.Remove(_place.Index))
        {
            _chosen.Add(_place.Index);
        }
    }

    private void Type(KeyPress key)
    {
        if (key.Action == KeyAction.Text && _place.Index >= 0)
        {
            _place = Cursor(Interview);
        }

        _line.Edit(key);
    }

    private void Enter(Shell shell)
    {
        if (_place.Index < 0)
        {
            Submit(shell, Interview.TakesMany && _line.Text.Trim() == "0" ? "none" : _line.Text);
        }
        else if (!Interview.TakesMany)
        {
            Submit(shell, Choices[_place.Index].Typed);
        }
        else if (_chosen.Count == 0)
        {
            _error = "Error: Nothing is chosen. Space says yes, 0 means none.";
        }
        else
        {
            Submit(shell, string.Join(' ', _chosen.Select(i => Choices[i].Typed)));
        }
    }

    private void Submit(Shell shell, string typed)
    {
        var reply = Interview.Submit(typed);
        if (!reply.Accepted)
        {
            Anew();
            _error = $"Error: {reply.Text}";
            return;
        }

        Anew();
        if (Interview.IsDone)
        {
            TrialPages.Finish(shell, recording, reply.Text);
            return;
        }

        shell.Show(reply.Text);
    }
}
