using System.Collections.Immutable;
using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>Findings of the note, what is missing among them, and their codes.</summary>
/// <param name="about">What the note is about.</param>
internal sealed class NoteFindings(Case about)
{
    private readonly DocumentData _words = about.Words;
    private readonly Answers _known = about.Session.Answers;

    /// <summary>Answers that stand out, with how they were obtained: what limits the person or was asked for.</summary>
    internal IEnumerable<Block> Notable()
    {
        yield return new Block.Heading(_words.Text(about.Advice.Stops.IsEmpty ? "note.led" : "note.led.stop"));
        Fact[] facts = [.. about.Knowledge.Questions.All.Where(IsNotable).Select(q => new Fact(_words.Labels[q.Id], Finding(q, _known[q.Id]!)))];
        yield return facts.Length == 0 ? new Block.Paragraph(_words.Text("note.led.none")) : new Block.Facts([.. facts], InRow: true);
    }

    /// <summary>How many answers stand out.</summary>
    internal int NotableCount => about.Knowledge.Questions.All.Count(IsNotable);

    private bool IsNotable(Question question) =>
        question.Id == QuestionIds.RedFlags ? _known.Many(QuestionIds.RedFlags) is { IsEmpty: false } : NotableOptions(question.Id).Any();

    /// <summary>Options of the answer that stand out; none where the answer is usual or not known.</summary>
    private IEnumerable<string> NotableOptions(QuestionId question) => _words.Notable.TryGetValue(question, out var notable) && _known[question]?.Value is { } value
        ? (value switch
        {
            AnswerValue.Choice choice => [choice.Option],
            AnswerValue.Many many => many.Options,
            _ => ImmutableArray<string>.Empty,
        }).Where(o => notable.Contains(o) || notable.Contains("*"))
        : [];

    /// <summary>Every answer with how it was obtained, by topic.</summary>
    internal IEnumerable<Block> Findings()
    {
        yield return new Block.Heading(_words.Text("note.findings"), 3);
        var known = about.Knowledge.Questions.All.Where(q => _known.Knows(q.Id));
        foreach (var topic in known.GroupBy(q => q.Topic))
        {
            yield return new Block.Heading(Spoken.Capital(topic.Key), 4);
            yield return new Block.Facts([.. topic.Select(q => new Fact(_words.Labels[q.Id], Finding(q, _known[q.Id]!)))]);
        }
    }

    private string Finding(Question question, Answer answer) => _words.Text(
        "note.finding",
        ("value", Value(question, answer.Value)),
        ("how", _words.Text("note.how." + (answer.How is { } how ? Words.Of(how) : "unstated"))));

    /// <summary>Stool is spoken of by the number of its type, so the number is said too.</summary>
    private string Value(Question question, AnswerValue value) => question.Id == QuestionIds.Stool && value is AnswerValue.Choice type
        ? _words.Text("note.stool", ("type", type.Option), ("form", PlanText.Lower(AnswerWording.Of(question, value))))
        : AnswerWording.Of(question, value);

    /// <summary>Questions of this depth without an answer, with what was assumed; answers that disagree.</summary>
    internal IEnumerable<Block> NotKnown()
    {
        yield return new Block.Heading(_words.Text("note.not-known"), 3);
        var filled = Assumptions.Fill(about.Knowledge.Questions, _known);
        var unsettled = about.Chosen?.Unsettled ?? [];
        string[] points =
        [
            .. OpenQuestions.Relevant(about.Knowledge.Questions, about.Session.Depth, _known)
                .Concat(unsettled.Select(id => about.Knowledge.Questions[id]))
                .DistinctBy(q => q.Id)
                .Where(q => !_known.Knows(q.Id))
                .Select(q => filled[q.Id] is { } assumed
                    ? _words.Text("note.not-known.assumed", ("label", _words.Labels[q.Id]), ("assumed", AnswerWording.Of(q, assumed.Value)))
                    : _words.Text("note.not-known.open", ("label", _words.Labels[q.Id]))),
            .. (about.Advice.Reach?.Contradictions ?? []).Select(c => _words.Text(
                "note.not-known.contradiction",
                ("label", PlanText.Lower(_words.Labels[c.Question])),
                ("direction", _words.Text(c.AnswerIsTooGood ? "note.better" : "note.worse")))),
        ];
        yield return points.Length == 0 ? new Block.Paragraph(_words.Text("note.not-known.none")) : new Block.Points([.. points]);
    }

    /// <summary>Codes of the aid, of the need and of the findings that are impairments.</summary>
    internal IEnumerable<Block> Codes()
    {
        yield return new Block.Heading(_words.Text("note.codes"), 3);
        var facts = new List<Fact>();
        if (about.Chosen is { } chosen)
        {
            facts.AddRange(_words.Iso.Where(i => chosen.Plan.Methods.Any(m => i.Aids.Contains(m.Id))).Select(i => new Fact(_words.Text("note.codes.iso"), $"{i.Code}, {i.Title}")));
        }

        bool need = about.Advice.Need is AidNeed.Yes or AidNeed.NothingOffered && about.Advice.Stops.IsEmpty;
        Fact[] icf = [.. _words.Icf.Where(c => c.Questions.IsEmpty ? need : c.Questions.Any(q => NotableOptions(new(q)).Any()))
            .Select(c => new Fact(_words.Text("note.codes.icf", ("code", Qualified(c))), c.Title))];
        if (facts.Count + icf.Length > 0)
        {
            yield return new Block.Facts([.. facts, .. icf]);
        }

        yield return new Block.Paragraph(_words.Text(icf.Length == 0 ? "note.codes.none" : "note.codes.note"));
    }

    private string Qualified(FunctionCode code) => code.Questions.SelectMany(q => NotableOptions(new(q))).Any(o => code.Complete.Contains(o)) ? code.Code + ".4" : code.Code;
}
