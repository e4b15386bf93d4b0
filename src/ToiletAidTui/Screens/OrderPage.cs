using ToiletAid.App.Wording;
using ToiletAid.Core.Person;
using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>A question that puts its options in order: Space gives the next place, equals the same place as the last one.</summary>
internal sealed class OrderPage : QuestionPage
{
    private readonly ListCursor _place;
    private readonly List<List<int>> _groups = [];

    internal OrderPage(Visit visit, bool withTopic)
        : base(visit, withTopic)
    {
        _place = new([.. Step.Question.Options.Select(o => o.Label)]);
        if (visit.Engine.Earlier?.Value is AnswerValue.Order earlier)
        {
            _groups.AddRange(earlier.Groups.Select(g => g.Select(id => Step.Question.Options.ToList().FindIndex(o => o.Id == id)).ToList()));
        }

        Lines = [.. base.Lines, "Space gives the next place, or takes it back. The equals key gives the same place as the last."];
    }

    internal override IReadOnlyList<string> Lines { get; }

    internal override IEnumerable<string> AnswerForms
    {
        get
        {
            if (_place.Index < 0)
            {
                return [Prompt];
            }

            return _place.Forms($"{State(_place.Index)}: {PlanText.Lower(Step.Question.Options[_place.Index].Label)}");
        }
    }

    /// <inheritdoc/>
    protected override void Answering(Shell shell, KeyPress key)
    {
        if (key.Text is " " or "=" && _place.Index >= 0)
        {
            Refuse(string.Empty, string.Empty);
            Put(_place.Index, asLast: key.Text == "=");
        }
        else if (_place.Move(key))
        {
            Refuse(string.Empty, string.Empty);
        }
        else if (ListCursor.IsDigit(key))
        {
            _place.Index = -1;
            RefuseDigit(key.Text);
        }
        else if (key.Action == KeyAction.Enter)
        {
            Submit(shell, string.Join(' ', _groups.Select(g => string.Join(" and ", g.Select(i => i + 1)))));
        }
    }

    private string State(int index)
    {
        int place = _groups.FindIndex(g => g.Contains(index));
        return place < 0 ? "No place" : $"Place {place + 1}";
    }

    private void Put(int index, bool asLast)
    {
        bool had = _groups.Any(g => g.Remove(index));
        _groups.RemoveAll(g => g.Count == 0);
        if (had && !asLast)
        {
            return;
        }

        if (!asLast || _groups.Count == 0)
        {
            _groups.Add([]);
        }

        _groups[^1].Add(index);
    }
}
