using System.Globalization;
using Humanizer;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>The clinic note: what was found, what follows from it, what was chosen and why, and what is not known.</summary>
/// <param name="about">What it is about.</param>
public sealed class NoteDocument(Case about)
{
    /// <summary>A decision of this project: long enough for a habit to form, short enough to catch sore skin.</summary>
    internal const int ReviewDays = 42;

    private readonly DocumentData _words = about.Words;
    private readonly Answers _known = about.Session.Answers;
    private readonly NoteFindings _findings = new(about);

    /// <summary>The note.</summary>
    public Document Make() => new Document(
        _words.Text("note.title"), about.English.Tag, LargePrint: false,
        about.Advice.Stops.IsEmpty
            ? [.. Head(), .. Choice(), .. _findings.Findings(), .. Notes(), .. Demands(), .. Plans(), .. RuledOut(), .. Cautions(), .. SetUp(), .. Ahead(), .. _findings.NotKnown(), .. Foot()]
            : [.. Head(), .. Stops(), .. _findings.Findings(), .. Notes(), .. Foot()]).In(about.English);

    private IEnumerable<Block> Head()
    {
        string recommended = about.Advice.Stops.IsEmpty ? about.Chosen is { } c ? PlanText.Name(c.Plan) : _words.Text("note.no-plan").TrimEnd('.') : _words.Text("note.stop").TrimEnd('.');
        yield return new Block.Facts(
        [
            new(_words.Text("note.person"), about.Person),
            new(_words.Text("note.visit"), Date(about.Session.Date)),
            new(_words.Text("note.depth"), _words.Text("note.depth." + ToiletAid.Core.Person.Words.Of(about.Session.Depth))),
            new(_words.Text("note.recommended"), recommended),
        ]);
        yield return new Block.Paragraph(_words.Text(about.Advice.Stops.IsEmpty ? "note.summary" : "note.summary.stop", ("person", about.Person), ("date", Date(about.Session.Date))));
    }

    private IEnumerable<Block> Stops()
    {
        yield return new Block.Heading(_words.Text("sheet.stop"));
        foreach (var stop in about.Advice.Stops)
        {
            yield return new Block.Paragraph(AdviceText.Sentence(stop), Urgent: true);
        }
    }

    private IEnumerable<Block> Choice()
    {
        yield return new Block.Heading(_words.Text("note.reasons"));
        if (about.Chosen is not { } chosen)
        {
            yield return new Block.Paragraph(_words.Text("note.no-plan"));
            yield return new Block.Points([.. NeedText.Arrange(about.Advice).Skip(1)]);
            yield break;
        }

        yield return new Block.Paragraph(NeedText.Sentence(about.Advice));
        foreach (string conflict in AdviceText.Conflicts(about.Advice, about.Knowledge))
        {
            yield return new Block.Paragraph(conflict);
        }

        yield return new Block.Paragraph($"{_words.Text("note.chosen", ("plan", PlanText.Name(chosen.Plan)))} {AdviceText.HowSure(chosen, about.Advice)}");
        if (chosen.Rank > 1)
        {
            yield return new Block.Paragraph(_words.Text("note.other", ("rank", chosen.Rank.ToString(CultureInfo.InvariantCulture))));
            yield return new Block.Facts([new(_words.Text("note.other-reason"), string.Empty)]);
        }

        yield return new Block.Points([.. AdviceText.Reasons(chosen)]);
        yield return new Block.Paragraph(about.Advice.PrioritiesStated ? _words.Text("note.weights-stated") : AdviceText.NoPriorities);
    }

    private IEnumerable<Block> Notes()
    {
        if (about.Notes.IsEmpty)
        {
            yield break;
        }

        yield return new Block.Heading(_words.Text("note.free"));
        foreach (var note in about.Notes)
        {
            if (note.Date != about.Session.Date)
            {
                yield return new Block.Paragraph(_words.Text("note.free.day", ("date", Date(note.Date))));
            }

            yield return new Block.Points(note.Lines, AsTyped: true);
        }
    }

    private IEnumerable<Block> Demands()
    {
        yield return new Block.Heading(_words.Text("note.demands"));
        var demands = about.Chosen is { } c ? AdviceText.Demands(c).ToList() : [];
        if (about.Chosen?.Demands.OutsideSurvey == true)
        {
            demands.Add(_words.Text("note.outside"));
        }

        yield return demands.Count > 0 ? new Block.Points([.. demands]) : new Block.Paragraph(_words.Text("note.no-demands"));
    }

    private IEnumerable<Block> Plans()
    {
        yield return new Block.Heading(_words.Text("note.considered"));
        yield return about.Advice.Ranked.IsEmpty
            ? new Block.Paragraph(_words.Text("note.no-plan"))
            : new Block.Points([.. about.Advice.Ranked.Select(Considered)]);
    }

    private string Considered(RankedPlan plan) => _words.Text(
        plan.BeatenBy is null ? "note.considered.one" : "note.considered.beaten",
        ("rank", plan.Rank.ToString(CultureInfo.InvariantCulture)),
        ("plan", PlanText.Name(plan.Plan)),
        ("share", SlotText.OfHundred(plan.FirstShare)),
        ("better", plan.BeatenBy is { } better ? PlanText.Method(better) : string.Empty));

    private IEnumerable<Block> RuledOut()
    {
        if (!about.Advice.RuledOut.IsEmpty)
        {
            yield return new Block.Heading(_words.Text("note.ruled-out"));
            yield return new Block.Points([.. about.Advice.RuledOut.Select(r => $"{r.Aid.Name}. {string.Join(' ', r.Reasons.Select(AdviceText.Sentence))}")]);
        }
    }

    private IEnumerable<Block> Cautions()
    {
        yield return new Block.Heading(_words.Text("note.cautions"));
        var cautions = about.Chosen?.Cautions ?? [];
        yield return cautions.IsEmpty
            ? new Block.Paragraph(_words.Text("note.no-cautions"))
            : new Block.Points([.. cautions.Select(c => _words.Text(
                "note.caution", ("severity", _words.Text("note.severity." + ToiletAid.Core.Person.Words.Of(c.Rule.Severity))), ("text", AdviceText.Sentence(c))))]);
    }

    private IEnumerable<Block> SetUp()
    {
        if (about.Chosen is not { } chosen)
        {
            yield break;
        }

        yield return new Block.Heading(_words.Text("note.setup"));
        yield return new Block.Steps(1, [.. new SetupText(chosen, _known, about.Knowledge).Steps()]);
        var cost = chosen.Setup.MonthlyCost;
        yield return new Block.Paragraph(_words.Text("note.cost", ("cost", Math.Round(cost.Total, 1).ToString("0.#", CultureInfo.InvariantCulture))));
        yield return new Block.Paragraph(_words.Text("note.placeholders"));
    }

    private IEnumerable<Block> Ahead()
    {
        if (about.Chosen is null)
        {
            yield break;
        }

        foreach (var block in new NoteTrials(about).Blocks())
        {
            yield return block;
        }

        yield return new Block.Heading(_words.Text("note.review"));
        yield return new Block.Paragraph(_words.Text(
            "note.review.text",
            ("date", Date(about.Session.Date.AddDays(ReviewDays))),
            ("after", TimeSpan.FromDays(ReviewDays).Humanize(culture: CultureInfo.InvariantCulture))));
    }

    private IEnumerable<Block> Foot()
    {
        yield return new Block.Heading(_words.Text("note.codes"));
        yield return new Block.Facts([.. _findings.Codes()]);
        yield return new Block.Heading(_words.Text("note.made"));
        yield return new Block.Paragraph(about.Made);
        yield return new Block.Paragraph(AdviceText.Limits);
        yield return new Block.Facts([new(_words.Text("note.signed"), string.Empty)]);
    }

    private string Date(DateOnly date) => about.English.Date(date);
}
