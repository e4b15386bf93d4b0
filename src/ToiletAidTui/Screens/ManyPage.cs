namespace ToiletAidTui.Screens;

/// <summary>A question with any number of answers: Space chooses, Enter takes what is chosen.</summary>
internal sealed class ManyPage : QuestionPage
{
    private readonly ListCursor _place;
    private readonly SortedSet<int> _chosen = [];
    private bool _none;

    internal ManyPage(Visit visit, bool withTopic)
        : base(visit, withTopic)
    {
        _place = new([.. Step.Question.Options.Select(o => o.Label)]);
        Lines = [.. base.Lines, "Space chooses. 0 is none of them."];
    }

    internal override IReadOnlyList<string> Lines { get; }

    internal override string Answer
    {
        get
        {
            if (_none)
            {
                return $"Answer: none of them{HowSuffix}";
            }

            if (_place.Index < 0)
            {
                return Prompt + HowSuffix;
            }

            string state = _chosen.Contains(_place.Index) ? "chosen" : "not chosen";
            return $"Answer {_place.Index + 1} of {Step.Question.Options.Length}, {state}: {Step.Question.Options[_place.Index].Label}{HowSuffix}";
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
        }
        else if (starts)
        {
            Refuse(string.Empty, string.Empty);
            _chosen.Clear();
            _none = true;
        }
        else if (_place.Move(key))
        {
            Refuse(string.Empty, string.Empty);
            _none = false;
        }
        else if (key.Act == Act.Enter)
        {
            Take(shell);
        }
    }

    private void Take(Shell shell)
    {
        if (!_none && _chosen.Count == 0 && _place.Index >= 0)
        {
            Refuse("Error: Nothing is chosen. Space chooses, 0 is none of them.", string.Empty);
            return;
        }

        Submit(shell, _none ? "none" : string.Join(' ', _chosen.Select(i => i + 1)));
    }
}
