using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>Findings of the note, what is missing among them, and their codes.</summary>
/// <param name="about">What the note is about.</param>
internal sealed class NoteFindings(Case about)
{
    private readonly DocumentData _words = about.Words;
    private readonly Answers _known = about.Session.Answers;

    /// <summary>Every answer with how it was obtained, by topic.</summary>
    internal IEnumerable<Block> Findings()
    {
        yield return new Block.Heading(_words.Text("note.findings"));
        var known = about.Knowledge.Questions.All.Where(q => _known.Knows(q.Id));
        foreach (var topic in known.GroupBy(q => q.Topic))
        {
            yield return new Block.Heading(Spoken.Capital(topic.Key), 3);
            yield return new Block.Facts([.. topic.Select(q => new Fact(_words.Labels[q.Id], Finding(q, _known[q.Id]!)))]);
        }
    }

    private string Finding(Question question, Answer answer) => _words.Text(
        "note.finding",
        ("value", Value(question, answer.Value)),
        ("how", _words.Text("note.how." + (answer.How is { } how ? Words.Of(how) : "unstated"))));

    /// <summary>Stool is spoken of by the number of its type, so the number is said too.</summary>
    private string Value(Question question, AnswerValue value) => question.Id == "stool" && value is AnswerValue.Choice type
        ? _words.Text("note.stool", ("type", type.Option), ("form", PlanText.Lower(AnswerWording.Of(question, value))))
        : AnswerWording.Of(question, value);

    /// <summary>Questions of this depth without an answer, with what was assumed; answers that disagree.</summary>
    internal IEnumerable<Block> NotKnown()
    {
        yield return new Block.Heading(_words.Text("note.not-known"));
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

    /// <summary>The codes of the aid and of what was found.</summary>
    internal IEnumerable<Fact> Codes()
    {
        if (about.Chosen is { } chosen)
        {
            string[] classes = [.. _words.Iso.Where(i => chosen.Plan.Methods.Any(m => i.Aids.Contains(m.Id))).Select(i => $"{i.Code}, {i.Title}")];
            yield return new(_words.Text("note.codes.iso"), classes.Length == 0 ? _words.Text("note.codes.iso-none") : string.Join(", ", classes));
        }

        foreach (var code in _words.Icf.Where(c => c.Questions.IsEmpty || c.Questions.Any(_known.Knows)))
        {
            yield return new(_words.Text("note.codes.icf", ("code", code.Code)), code.Title);
        }
    }
}
