using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using ToiletAid.App.Articles;
using ToiletAid.App.Pictures;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Documents;

/// <summary>The sheet that is left with the person or with a helper: plain words, large print, a drawing beside each step that is easier seen than said.</summary>
/// <param name="about">What it is about.</param>
/// <param name="toHelper">True for the helper's sheet.</param>
/// <param name="inPictures">True for large pictures with few words; null for what the answers ask for. The helper's sheet is always in words.</param>
public sealed class SheetDocument(Case about, bool toHelper, bool? inPictures = null)
{
    /// <summary>A decision: what is told besides would make the sheet longer, and stands in the note.</summary>
    private const int MostOfANewOne = 3;

    /// <summary>Lines that must stay free on the last page, since the room is only estimated (decision).</summary>
    private const int Spare = 3;

    /// <summary>Pages of a sheet: one leaf, printed on both sides.</summary>
    private const int MostPages = 2;

    /// <summary>Who follows one step at a time goes by a picture better than by a page of text (a decision of this project). Who sees nothing is read to.</summary>
    private readonly bool _inPictures = !toHelper && about.Chosen is not null && about.Advice.Stops.IsEmpty
        && (inPictures ?? (about.Session.Answers.Is(OptionIds.StepsOne) && !about.Session.Answers.Is(OptionIds.SightNone)));

    private readonly DocumentData _words = about.Words;

    /// <summary>The sheet.</summary>
    public Document Make()
    {
        Block[] body = [.. Head(), .. Body()], more = [.. NewOne()], foot = [.. Foot()];
        var sheet = Of([.. body, .. foot]);
        if (more.Length == 0)
        {
            return sheet;
        }

        var longer = Of([.. body, .. more, .. foot]);
        return PageFill.Pages(longer, Spare) <= Math.Min(MostPages, PageFill.Pages(sheet, Spare)) ? longer : sheet;
    }

    private Document Of(Block[] blocks) => new Document(Title(), about.English.Tag, LargePrint: true, [.. blocks]).In(about.English);

    /// <summary>What is done, and by whom.</summary>
    private string Title()
    {
        string kind = !about.Advice.Stops.IsEmpty ? "sheet.title.stop" : about.Chosen is not { } chosen ? "sheet.title.none"
            : chosen.Plan.Aid.Method == MethodKind.Helper ? "sheet.title.helped" : "sheet.title";
        return Said(kind, ("aid", about.Chosen is { } c ? Name(c.Plan.Aid) : string.Empty));
    }

    private IEnumerable<Block> Head()
    {
        yield return new Block.Paragraph(Said("sheet.code", ("person", about.Person), ("date", about.English.Date(about.Session.Date))));
    }

    private IEnumerable<Block> Body()
    {
        if (!about.Advice.Stops.IsEmpty)
        {
            return [new Block.Heading(_words.Text("sheet.stop")), .. about.Advice.Stops.Select(s => new Block.Paragraph(PlainRules.Of(s, toHelper), Urgent: true))];
        }

        if (_inPictures)
        {
            return [new Block.Paragraph(Way(about.Chosen!.Plan)), .. Urgent(), .. Pictures(), .. Cautions("sheet.read-out", [])];
        }

        return about.Chosen is { } chosen
            ? [new Block.Paragraph(Way(chosen.Plan)), .. Role(), .. Cautions("sheet.care", Urgent()), .. Steps()]
            : [new Block.Paragraph(_words.Text("sheet.none"), Urgent: true), .. about.Advice.ForEveryPlan.Select(c => new Block.Paragraph(PlainRules.Of(c, toHelper)))];
    }

    private IEnumerable<Block> Role()
    {
        if (toHelper)
        {
            yield return new Block.Paragraph(_words.Text("sheet.helper.role"));
        }
    }

    /// <summary>The way of the plan, and what is used besides.</summary>
    private string Way(Plan plan)
    {
        string way = Said("sheet.way", ("aid", Name(plan.Aid)));
        return plan.AddOns.IsEmpty ? way
            : $"{way} {Said("sheet.besides", ("things", plan.AddOns.Select(a => _words.AddOns.GetValueOrDefault(a.Id) ?? PlanText.Lower(a.Name)).Humanize("and")))}";
    }

    /// <summary>A kind of aid in plain words; one of the clinic's own stock by the name that the clinic gave it.</summary>
    private string Name(Aid aid)
    {
        string? kind = (toHelper ? _words.AidsForHelper.GetValueOrDefault(aid.Id) : null) ?? _words.Aids.GetValueOrDefault(aid.Id);
        return kind is null ? PlanText.Lower(aid.Name) : aid.Variant is { } variant ? $"{kind}, {variant.Has}" : kind;
    }

    private ImmutableArray<string> PlainSteps(SetupText setup)
    {
        var companion = about.Chosen!.Plan.Companion;
        return [.. setup.Steps().Select(s => companion is null ? s : s.Replace(PlanText.Lower(companion.Name), Name(companion), StringComparison.Ordinal))];
    }

    /// <summary>The steps before anything else that is done; numbered through, in parts no longer than the person follows in a row.</summary>
    private IEnumerable<Block> Steps()
    {
        var setup = new SetupText(about.Chosen!, about.Session.Answers, about.Knowledge, toHelper ? SetupReader.Helper : SetupReader.Person);
        var steps = PlainSteps(setup);
        var drawings = StepDrawings.Of(about.Chosen!, about.Session.Answers, setup, toHelper);
        string who = toHelper ? "helper" : "person";
        yield return new Block.Heading(_words.Text("sheet.steps"));
        if (about.Chosen!.Plan.Aid.Method != MethodKind.Helper)
        {
            yield return new Block.Paragraph(_words.Text("sheet.first"));
        }

        // Where another person cleans, the steps are theirs, and who lies or sits still is read out none.
        if (setup.FollowedInARow is not { } row || row >= steps.Length || about.Chosen!.Plan.Aid.Method == MethodKind.Helper)
        {
            if (toHelper && about.Chosen!.Plan.Aid.Method != MethodKind.Helper)
            {
                yield return new Block.Paragraph(_words.Text("sheet.whose"));
            }

            yield return new Block.Steps(1, steps, drawings);
            yield break;
        }

        bool unread = !toHelper && about.Session.Answers.Is(OptionIds.SightNone);
        yield return new Block.Paragraph(_words.Text((row == 1 ? "sheet.one." : "sheet.some.") + (unread ? "unread" : who)));
        if (row == 1)
        {
            yield return new Block.Steps(1, steps, drawings);
            yield break;
        }

        for (int i = 0; i < steps.Length; i += row)
        {
            yield return new Block.Heading(_words.Text("sheet.part", ("number", ((i / row) + 1).ToString(CultureInfo.InvariantCulture))), 3);
            yield return new Block.Steps(i + 1, [.. steps.Skip(i).Take(row)], [.. drawings.Skip(i).Take(row)]);
        }
    }

    /// <summary>A large picture for every step, with as few words as will do.</summary>
    private IEnumerable<Block> Pictures()
    {
        var setup = new SetupText(about.Chosen!, about.Session.Answers, about.Knowledge, SetupReader.Person);
        if (about.Chosen!.Plan.Aid.Method != MethodKind.Helper)
        {
            yield return new Block.Paragraph(_words.Text("sheet.first"));
        }

        yield return new Block.Steps(1, [.. setup.Each().Select(s => s.Few)], StepDrawings.Every(about.Chosen!, about.Session.Answers, setup)) { Large = true };
    }

    private Block[] Urgent() =>
        [.. about.Chosen!.Cautions.Where(c => c.Rule.Severity == Severity.Urgent).Select(c => new Block.Paragraph(PlainRules.Of(c, toHelper), Urgent: true))];

    /// <summary>Cautions under a heading; no heading where there is nothing under it.</summary>
    /// <param name="heading">Id of the heading.</param>
    /// <param name="urgent">Those that are urgent, where they are told here.</param>
    private Block[] Cautions(string heading, Block[] urgent)
    {
        string[] others = [.. about.Chosen!.Cautions.Where(c => c.Rule.Severity != Severity.Urgent).Select(c => PlainRules.Of(c, toHelper))];
        Block[] told = [.. urgent, .. others.Length > 0 ? (Block[])[new Block.Points([.. others])] : []];
        return told.Length > 0 ? [new Block.Heading(_words.Text(heading)), .. told] : [];
    }

    /// <summary>What a new one must be like, in short: it is bought by the person or the family, who have this sheet and not the note. Left out where it would take another page.</summary>
    private IEnumerable<Block> NewOne()
    {
        if (about.Advice.Stops.IsEmpty && !_inPictures && about.Demand() is { Musts: { IsEmpty: false } musts })
        {
            var traits = new TraitText(about.Knowledge);
            yield return new Block.Heading(_words.Text("sheet.new-one"));
            yield return new Block.Points([.. musts.Take(MostOfANewOne).Select(traits.InShort)]);
        }
    }

    private IEnumerable<Block> Foot()
    {
        if (about.Advice.Stops.IsEmpty)
        {
            yield return new Block.Heading(_words.Text("sheet.signs"));
            yield return new Block.Paragraph(Said("sheet.signs.text"));
        }

        yield return new Block.Heading(_words.Text("sheet.ring"));
        yield return new Block.Facts([new(_words.Text("sheet.ring.name"), string.Empty), new(_words.Text("sheet.ring.number"), string.Empty)], InRow: true);
        yield return new Block.Paragraph(about.Chosen is null ? _words.Text("sheet.limits.stop") : Said("sheet.limits"));
    }

    /// <summary>A text, in the helper's form where there is one.</summary>
    private string Said(string key, params ReadOnlySpan<(string Name, string Value)> slots) =>
        _words.Text(toHelper && _words.Texts.ContainsKey(key + ".helper") ? key + ".helper" : key, slots);
}
