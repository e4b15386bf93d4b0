using ToiletAid.App.Wording;
using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>A question with any number of answers: Space chooses, Enter takes what is chosen.</summary>
internal sealed class ManyPage : QuestionPage
{
    private readonly ListCursor _place;
    private readonly SortedSet<int> _chosen;
    private bool _none;

    internal ManyPage(Visit visit, bool withTopic)
        : base(visit, withTopic)
    {
        _place = new([.. Step.Question.Options.Select(o => o.Label)]);
        _chosen = [.. visit.Engine.Ticked];
        Lines = [.. base.Lines, "Space switches between yes and no. 0 means none."];
    }

    internal override IReadOnlyList<string> Lines { get; }

    internal override IEnumerable<string> AnswerForms
    {
        get
        {
            if (_none)
            {
                return [$"None of them{HowSuffix}"];
            }

            if (_place.Index < 0)
            {
                return [Prompt];
            }

            string label = PlanText.Lower(Step.Question.Options[_place.Index].Label) + HowSuffix;
            return _place.Forms($"{(_chosen.Contains(_place.Index) ? "Yes" : "No")}: {label}");
        }
    }

    /// <inheritdoc/>
    protected override void Answering(Shell shell, KeyPress key)
    {
        bool starts = key.Text == "0" && !_place.Continues;
        if (key.Text == " " && _place.Index >= 0 && !_none)
        {
            Refuse(string.Empty, string.Empty);
            if (!_chosen.Remove(_place.Index))
            {
                _chosen.Add(_place.Index);
            }

            Visit.Engine.Tick(_chosen);
        }
        else if (starts)
        {
            Refuse(string.Empty, string.Empty);
            _chosen.Clear();
            Visit.Engine.Tick(_chosen);
            _none = true;
        }
        else if (_place.Move(key))
        {
            Refuse(string.Empty, string.Empty);
            _none = false;
        }
        else if (ListCursor.IsDigit(key))
        {
            (_none, _place.Index) = (false, -1);
            RefuseDigit(key.Text);
        }
        else if (key.Action == KeyAction.Enter)
        {
            Take(shell);
        }
    }

    private void Take(Shell shell)
    {
        if (!_none && _chosen.Count == 0 && _place.Index >= 0)
        {
            Refuse("Error: Nothing is chosen. Space says yes, 0 means none.", string.Empty);
            return;
        }

        Submit(shell, _none ? "none" : string.Join(' ', _chosen.Select(i => i + 1)));
    }
}
