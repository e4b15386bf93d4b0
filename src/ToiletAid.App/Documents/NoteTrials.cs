using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>Trials and goal of the note.</summary>
/// <param name="about">What the note is about.</param>
internal sealed class NoteTrials(Case about)
{
    private readonly DocumentData _words = about.Words;
    private readonly TrialText _text = new(about.Knowledge);

    /// <summary>Both sections.</summary>
    internal IEnumerable<Block> Blocks() => [.. Trials(), .. Goal()];

    private IEnumerable<Block> Trials()
    {
        yield return new Block.Heading(_words.Text("note.trial"));
        var trials = about.Session.Answers.Trials;
        if (trials.IsEmpty)
        {
            yield return new Block.Paragraph(_words.Text("note.trial.none"));
            yield return new Block.Facts([new(_words.Text("note.trial.dry"), string.Empty), new(_words.Text("note.trial.real"), string.Empty)]);
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
            ]);
        }

        yield return new Block.Paragraph(_words.Text("note.trial.counts"));
    }

    private IEnumerable<Block> Goal()
    {
        var noted = about.Session.Answers.Trials.LastOrDefault();
        yield return new Block.Heading(_words.Text("note.goal"));
        yield return new Block.Paragraph(noted is null ? _words.Text("note.goal.text") : _words.Text("note.goal.known", ("date", about.English.Date(noted.Date))));
        yield return new Block.Points([.. Enumerable.Range(1, 6).Reverse().Select(level => _words.Text($"note.goal.{level}") + ".")]);
        yield return new Block.Facts(
        [
            .. noted is null ? (Fact[])[] : [new(_words.Text("note.goal.before"), Level(noted.Trial.Before))],
            new(_words.Text(noted is null ? "note.goal.now" : "note.goal.after"), Level(noted?.Trial.After)),
            new(_words.Text("note.goal.then"), Level(noted?.Trial.Goal)),
        ]);
    }

    /// <summary>A level, or an empty line to fill in.</summary>
    private string Level(string? code) => code is null ? string.Empty : Spoken.Capital(_text.Level(code));

    private string Run(Trial trial, RunKind kind) => string.Join(' ', trial.Runs.Where(r => r.Kind == kind).SelectMany(_text.Findings)).TrimEnd('.');
}
