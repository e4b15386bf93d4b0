using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>A question with one answer out of several.</summary>
internal sealed class ChoicePage : QuestionPage
{
    private readonly ListCursor _place;

    internal ChoicePage(Visit visit, bool withTopic)
        : base(visit, withTopic) =>
        _place = new([.. Step.Question.Options.Select(o => o.Label)]);

    internal override IEnumerable<string> AnswerForms => _place.Index < 0
        ? [Prompt]
        : _place.Forms(Step.Question.Options[_place.Index].Label + HowSuffix);

    /// <inheritdoc/>
    protected override void Answering(Shell shell, KeyPress key)
    {
        if (_place.Move(key))
        {
            Refuse(string.Empty, string.Empty);
            if (_place.IsByNumber && shell.Services.OneKey)
            {
                Submit(shell, $"{_place.Index + 1}");
            }
        }
        else if (ListCursor.IsDigit(key))
        {
            _place.Index = -1;
            RefuseDigit(key.Text);
        }
        else if (key.Action == KeyAction.Enter)
        {
            Submit(shell, _place.Index < 0 ? string.Empty : $"{_place.Index + 1}");
        }
    }
}
