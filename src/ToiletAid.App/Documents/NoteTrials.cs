using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>Trials, review and goal of the note.</summary>
/// <param name="about">What the note is about.</param>
internal sealed class NoteTrials(Case about)
{
    private readonly DocumentData _words = about.Words;
    private readonly TrialText _text = new(about.Knowledge);
    private readonly Trial? _noted = about.Session.Answers.Trials.LastOrDefault()?.Trial;

    /// <summary>What was tried; lines to fill in where nothing was.</summary>
    internal IEnumerable<Block> Trials()
    {
        yield return new Block.Heading(_words.Text("note.trial"));
        var trials = about.Session.Answers.Trials;
        if (trials.IsEmpty)
        {
            Fact real = new(_words.Text("note.trial.real"), string.Empty);
            yield return new Block.Facts(about.Chosen?.Plan.Aid.Method == MethodKind.Helper ? [real] : [new(_words.Text("note.trial.dry"), string.Empty), real], InRow: true);
            yield break;
        }

        foreach (var past in trials)
        {
            yield return new Block.Facts(
            [
                new(_words.Text("note.trial.day"), about.English.Date(past.Date)),
                new(_words.Text("note.trial.plan"), _text.Plan(past.Trial.Plan)),
                new(_words.Text("note.trial.before"), Level(past.Trial.Before)),
                new(_words.Text("note.trial.dry"), Run(past.Trial, RunKind.Dry)),
                new(_words.Text("note.trial.real"), Run(past.Trial, RunKind.Real)),
            ], InRow: true);
        }

        yield return new Block.Paragraph(_words.Text("note.trial.counts"));
    }

    /// <summary>When to look again, and the levels of help now and wanted.</summary>
    /// <param name="review">The day that is proposed.</param>
    internal IEnumerable<Block> Ahead(DateOnly review)
    {
        yield return new Block.Heading(_words.Text("note.ahead"));
        yield return new Block.Facts(
        [
            new(_words.Text("note.review.due"), _words.Text("note.review.proposed", ("date", about.English.Date(review)))),
            .. _noted is null ? (Fact[])[] : [new(_words.Text("note.goal.before"), Level(_noted.Before))],
            new(_words.Text(_noted is null ? "note.goal.now" : "note.goal.after"), Level(_noted?.After)),
            new(_words.Text("note.goal.then"), Level(_noted?.Goal)),
        ], InRow: true);
    }

    /// <summary>The six levels in words.</summary>
    internal IEnumerable<Block> Levels()
    {
        yield return new Block.Heading(_words.Text("note.levels"), 3);
        yield return new Block.Paragraph(_words.Text("note.levels.text"));
        yield return new Block.Points([.. Enumerable.Range(1, 6).Reverse().Select(level => _words.Text($"note.goal.{level}") + ".")]);
    }

    /// <summary>A level, or an empty line to fill in.</summary>
    private string Level(string? code) => code is null ? string.Empty : Spoken.Capital(_text.Level(code));

    private string Run(Trial trial, RunKind kind) => string.Join(' ', trial.Runs.Where(r => r.Kind == kind).SelectMany(_text.Findings)).TrimEnd('.');
}
