using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Pictures;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Documents;

/// <summary>The sheet that is left with the person or with a helper: plain words, large print, a drawing beside each step that is easier seen than said.</summary>
/// <param name="about">What it is about.</param>
/// <param name="toHelper">True for the helper's sheet.</param>
public sealed class SheetDocument(Case about, bool toHelper)
{
    private readonly DocumentData _words = about.Words;

    /// <summary>The sheet.</summary>
    public Document Make() => new Document(
        Title(), about.English.Tag, LargePrint: true,
        [.. Head(), .. Body(), .. Foot()]).In(about.English);

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

        return about.Chosen is { } chosen
            ? [new Block.Paragraph(Said("sheet.way", ("aid", Name(chosen.Plan)))), .. Role(), .. Cautions(), .. Steps()]
            : [new Block.Paragraph(_words.Text("sheet.none"), Urgent: true), .. about.Advice.ForEveryPlan.Select(c => new Block.Paragraph(PlainRules.Of(c, toHelper)))];
    }

    private IEnumerable<Block> Role()
    {
        if (toHelper)
        {
            yield return new Block.Paragraph(_words.Text("sheet.helper.role"));
        }
    }

    private string Name(Plan plan)
    {
        string aid = Name(plan.Aid);
        return plan.AddOns.IsEmpty ? aid : $"{aid}, with {string.Join(" and ", plan.AddOns.Select(a => _words.AddOns.GetValueOrDefault(a.Id) ?? PlanText.Lower(a.Name)))}";
    }

    /// <summary>A kind of aid in plain words; one of the clinic's own stock by the name that the clinic gave it.</summary>
    private string Name(Aid aid) =>
        (toHelper ? _words.AidsForHelper.GetValueOrDefault(aid.Id) : null) ?? _words.Aids.GetValueOrDefault(aid.Id) ?? PlanText.Lower(aid.Name);

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

        if (setup.FollowedInARow is not { } row || row >= steps.Length)
        {
            yield return new Block.Steps(1, steps, drawings);
            yield break;
        }

        bool unread = !toHelper && about.Session.Answers.Choice("sight") == "none";
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

    private IEnumerable<Block> Cautions()
    {
        if (about.Chosen!.Cautions.IsEmpty)
        {
            yield break;
        }

        yield return new Block.Heading(_words.Text("sheet.care"));
        foreach (var urgent in about.Chosen.Cautions.Where(c => c.Rule.Severity == Severity.Urgent))
        {
            yield return new Block.Paragraph(PlainRules.Of(urgent, toHelper), Urgent: true);
        }

        string[] others = [.. about.Chosen.Cautions.Where(c => c.Rule.Severity != Severity.Urgent).Select(c => PlainRules.Of(c, toHelper))];
        if (others.Length > 0)
        {
            yield return new Block.Points([.. others]);
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
        yield return new Block.Facts([new(_words.Text("sheet.ring.name"), string.Empty), new(_words.Text("sheet.ring.number"), string.Empty)]);
        yield return new Block.Paragraph(about.Chosen is null ? _words.Text("sheet.limits.stop") : Said("sheet.limits"));
    }

    /// <summary>A text, in the helper's form where there is one.</summary>
    private string Said(string key, params ReadOnlySpan<(string Name, string Value)> slots) =>
        _words.Text(toHelper && _words.Texts.ContainsKey(key + ".helper") ? key + ".helper" : key, slots);
}
