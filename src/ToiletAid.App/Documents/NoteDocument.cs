using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Articles;
using ToiletAid.App.Pictures;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>The clinic note: one page to sign, with what led to what, and an appendix with everything else.</summary>
/// <param name="about">What it is about.</param>
public sealed class NoteDocument(Case about)
{
    /// <summary>A decision of this project: long enough for a habit to form, short enough to catch sore skin.</summary>
    internal const int ReviewDays = 42;

    // Decisions: what goes beyond these stands in the appendix, so that the first page stays one.
    private const int MostRisks = 5;
    private const int MostRisksOfMany = 3;
    private const int ManyFindings = 8;
    private const int MostNotes = 3;

    private readonly DocumentData _words = about.Words;
    private readonly Answers _known = about.Session.Answers;
    private readonly NoteFindings _findings = new(about);
    private readonly NoteTrials _trials = new(about);

    /// <summary>The note.</summary>
    public Document Make()
    {
        ImmutableArray<Block> blocks = about.Advice.Stops.IsEmpty ? [.. First(), .. Behind()] : [.. Stopped()];
        string footer = _words.Text("note.footer", ("person", about.Person), ("date", Date(about.Session.Date)));
        return new Document(_words.Text("note.title"), about.English.Tag, LargePrint: false, blocks) { Footer = footer }.In(about.English);
    }

    /// <summary>The page to sign.</summary>
    private IEnumerable<Block> First() =>
    [
        .. Need(), .. _findings.Notable(), .. Plan(), .. AreNotesShort ? Notes(2) : [], .. about.Chosen is null ? [] : _trials.Trials(), .. SetUp(), .. Cost(), .. Risks(),
        .. about.Chosen is null ? [] : _trials.Ahead(about.Session.Date.AddDays(ReviewDays)), .. Signature(),
    ];

    /// <summary>The appendix.</summary>
    private IEnumerable<Block> Behind() =>
    [
        Appendix(), .. Sure(), .. _findings.Findings(), .. Demands(), .. Articles(), .. Plans(), .. RuledOut(), .. Cautions(), .. _findings.NotKnown(), .. AreNotesShort ? [] : Notes(3),
        .. about.Chosen is null ? [] : _trials.Levels(), .. _findings.Codes(), .. Made(),
    ];

    /// <summary>The note where a red flag stops everything.</summary>
    private IEnumerable<Block> Stopped() =>
    [
        .. Need(), .. Stops(), .. _findings.Notable(), .. AreNotesShort ? Notes(2) : [], .. Signature(),
        Appendix(), .. _findings.Findings(), .. AreNotesShort ? [] : Notes(3), .. _findings.Codes(), .. Made(),
    ];

    private IEnumerable<Block> Need()
    {
        yield return new Block.Facts([new(_words.Text("note.person"), about.Person), new(_words.Text("note.visit"), Date(about.Session.Date))], InRow: true);
        yield return new Block.Heading(_words.Text("note.need"));
        string who = _known.Si(QuestionIds.Age) is { } age
            ? _words.Text("note.need.who.aged", ("person", about.Person), ("age", Math.Floor(age).ToString(CultureInfo.InvariantCulture)))
            : _words.Text("note.need.who", ("person", about.Person));
        yield return new Block.Paragraph(about.Advice.Stops.IsEmpty ? $"{who} {Reason()}" : who);
        yield return new Block.Facts([new(_words.Text("note.diagnosis"), string.Empty), new(_words.Text("note.consent"), string.Empty)], InRow: true);
    }

    /// <summary>Why an aid is needed, in one sentence.</summary>
    private string Reason()
    {
        var hand = about.Advice.Need == AidNeed.Yes ? about.Advice.RuledOut.FirstOrDefault(r => r.Aid.Reach == ReachKind.BareHand) : null;
        return hand is null ? NeedText.Sentence(about.Advice) : _words.Text("note.need.cannot", ("why", Later(AdviceText.Sentence(hand.Reasons[0]))));
    }

    /// <summary>The first sentence of a text, to stand after a colon.</summary>
    private static string Later(string text)
    {
        int end = text.IndexOf(". ", StringComparison.Ordinal);
        return PlanText.Lower(end < 0 ? text : text[..(end + 1)]);
    }

    private IEnumerable<Block> Stops()
    {
        yield return new Block.Heading(_words.Text("sheet.stop"));
        foreach (var stop in about.Advice.Stops)
        {
            yield return new Block.Paragraph(AdviceText.Sentence(stop), Urgent: true);
        }

        yield return Told();
    }

    private IEnumerable<Block> Plan()
    {
        yield return new Block.Heading(_words.Text("note.plan"));
        if (about.Chosen is not { } chosen)
        {
            yield return new Block.Paragraph(_words.Text("note.no-plan"));
            yield return new Block.Points([.. NeedText.Arrange(about.Advice).Skip(1)]);
            yield break;
        }

        string plan = _words.Text("note.plan.first", ("plan", PlanText.Name(chosen.Plan)));
        if (chosen.Rank > 1)
        {
            yield return new Block.Paragraph($"{plan} {_words.Text("note.other", ("rank", chosen.Rank.ToString(CultureInfo.InvariantCulture)))}");
            yield return new Block.Facts([new(_words.Text("note.other-reason"), string.Empty)]);
            yield break;
        }

        var why = new BriefText(about.Knowledge).Of(about.Advice, _known).Where(p => p.Topic == BriefTopic.Reason).Select(p => p.Sentence);
        yield return new Block.Paragraph(string.Join(' ', why.Concat(new NoteCost(about, chosen).WhyNot()).Distinct(StringComparer.Ordinal).Prepend(plan)));
        foreach (string conflict in AdviceText.Conflicts(about.Advice, about.Knowledge))
        {
            yield return new Block.Paragraph(conflict);
        }
    }

    private bool AreNotesShort => about.Notes.Sum(n => n.Lines.Length) <= MostNotes;

    private IEnumerable<Block> Notes(int level)
    {
        if (about.Notes.IsEmpty)
        {
            yield break;
        }

        yield return new Block.Heading(_words.Text("note.free"), level);
        foreach (var note in about.Notes)
        {
            if (note.Date != about.Session.Date)
            {
                yield return new Block.Paragraph(_words.Text("note.free.day", ("date", Date(note.Date))));
            }

            yield return new Block.Points(note.Lines, AsTyped: true);
        }
    }

    private IEnumerable<Block> SetUp()
    {
        if (about.Chosen is { } chosen)
        {
            yield return new Block.Heading(_words.Text("note.setup"));
            var setup = new SetupText(chosen, _known, about.Knowledge);
            yield return new Block.Steps(1, [.. setup.Steps()], StepDrawings.Way(chosen, _known, setup));
        }
    }

    private IEnumerable<Block> Cost()
    {
        if (about.Chosen is { } chosen)
        {
            yield return new Block.Heading(_words.Text("note.cost.heading"));
            yield return new Block.Paragraph(new NoteCost(about, chosen).Cost());
        }
    }

    private ImmutableArray<Finding> Warnings => about.Chosen?.Cautions ?? about.Advice.ForEveryPlan;

    private IEnumerable<Block> Risks()
    {
        yield return new Block.Heading(_words.Text("note.risks"));
        var warnings = Warnings;
        int most = _findings.NotableCount < ManyFindings ? MostRisks : MostRisksOfMany;
        string[] first = [.. warnings.Take(most).Select(w => w.Rule.Brief ?? AdviceText.Sentence(w))];
        yield return first.Length == 0 ? new Block.Paragraph(_words.Text("note.no-cautions"))
            : new Block.Points(warnings.Length > most ? [.. first, _words.Text("note.risks.more")] : [.. first], InRow: true);
        yield return Told();
    }

    private Block.Facts Told() => new([new(_words.Text("note.told"), string.Empty), new(_words.Text("note.told.when"), string.Empty)], InRow: true);

    private IEnumerable<Block> Signature()
    {
        yield return new Block.Heading(_words.Text("note.signature"));
        yield return new Block.Facts(
            [
                new(_words.Text("note.signed.name"), string.Empty), new(_words.Text("note.signed.role"), string.Empty), new(_words.Text("note.signed.number"), string.Empty),
                new(_words.Text("note.signature"), string.Empty), new(_words.Text("note.signed.date"), string.Empty),
            ], InRow: true);
    }

    private Block.Heading Appendix() => new(_words.Text("note.appendix"), 2, OnNewPage: true);

    private IEnumerable<Block> Sure()
    {
        if (about.Chosen is not { } chosen)
        {
            yield break;
        }

        yield return new Block.Heading(_words.Text("note.sure"), 3);
        yield return new Block.Paragraph($"{AdviceText.HowSure(chosen, about.Advice)} {(about.Advice.PrioritiesStated ? _words.Text("note.weights-stated") : AdviceText.NoPriorities)}");
        yield return new Block.Heading(_words.Text("note.criteria"), 3);
        yield return new Block.Points([.. AdviceText.Reasons(chosen)]);
    }

    private IEnumerable<Block> Demands()
    {
        yield return new Block.Heading(_words.Text("note.demands"), 3);
        var demands = about.Chosen is { } c ? AdviceText.Demands(c).ToList() : [];
        if (about.Chosen?.Demands.OutsideSurvey == true)
        {
            demands.Add(_words.Text("note.outside"));
        }

        yield return demands.Count > 0 ? new Block.Points([.. demands]) : new Block.Paragraph(_words.Text("note.no-demands"));
        yield return new Block.Paragraph(_words.Text("note.estimates"));
    }

    /// <summary>What to look for in a shop or a catalogue, as it is told by the command.</summary>
    private IEnumerable<Block> Articles()
    {
        if (about.Demand() is { Lines.IsEmpty: false } demand)
        {
            var traits = new TraitText(about.Knowledge);
            yield return new Block.Heading(_words.Text("note.articles"), 3);
            foreach (string tools in new LookForText(about.Knowledge).Tools(demand))
            {
                yield return new Block.Paragraph(tools);
            }

            yield return new Block.Points([.. demand.Lines.Select(l => $"{_words.Text(l.IsMust ? "note.articles.must" : demand.IsFirst ? "note.articles.wish" : "note.articles.first")} {PlanText.Lower(traits.Sentence(l, unitTwice: true))} {traits.Check(l.Trait)}")]);
        }
    }

    private IEnumerable<Block> Plans()
    {
        yield return new Block.Heading(_words.Text("note.considered"), 3);
        yield return about.Advice.Ranked.IsEmpty
            ? new Block.Paragraph(_words.Text("note.no-plan"))
            : new Block.Points([.. about.Advice.Ranked.Select(Considered)]);
    }

    private string Considered(RankedPlan plan) => _words.Text(
        plan.BeatenBy is null ? "note.considered.one" : "note.considered.beaten",
        ("rank", plan.Rank.ToString(CultureInfo.InvariantCulture)),
        ("plan", PlanText.Name(plan.Plan)),
        ("share", SlotText.OfHundred(plan.FirstShare)),
        ("better", plan.BeatenBy is { } better ? PlanText.The(better) : string.Empty));

    private IEnumerable<Block> RuledOut()
    {
        if (!about.Advice.RuledOut.IsEmpty)
        {
            yield return new Block.Heading(_words.Text("note.ruled-out"), 3);
            yield return new Block.Points([.. about.Advice.RuledOut.Select(r => $"{r.Aid.Name}. {string.Join(' ', r.Reasons.Select(AdviceText.Sentence))}")]);
        }
    }

    private IEnumerable<Block> Cautions()
    {
        yield return new Block.Heading(_words.Text("note.cautions"), 3);
        var cautions = Warnings;
        yield return cautions.IsEmpty
            ? new Block.Paragraph(_words.Text("note.no-cautions"))
            : new Block.Points([.. cautions.Select(c => _words.Text(
                "note.caution", ("severity", _words.Text("note.severity." + ToiletAid.Core.Person.Words.Of(c.Rule.Severity))), ("text", AdviceText.Sentence(c))))]);
    }

    private IEnumerable<Block> Made()
    {
        yield return new Block.Heading(_words.Text("note.made"), 3);
        yield return new Block.Facts([new(_words.Text("note.depth"), _words.Text("note.depth." + ToiletAid.Core.Person.Words.Of(about.Session.Depth)))]);
        yield return new Block.Paragraph(about.Made);
        yield return new Block.Paragraph(AdviceText.Limits);
    }

    private string Date(DateOnly date) => about.English.Date(date);
}
