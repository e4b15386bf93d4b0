using System.Collections.Immutable;
using System.Text.Json;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Articles;

/// <summary>What to look for in an article, as lines to be read aloud and as data.</summary>
/// <param name="knowledge">Names and shares.</param>
public sealed class LookForText(KnowledgeBase knowledge)
{
    private readonly TraitText _traits = new(knowledge);

    private string SureOf => SlotText.OfHundred(knowledge.Evidence.Value(EvidenceIds.ReachSureShare));

    /// <summary>The plan that is meant where none is named: the first of which something is bought; null when there is none.</summary>
    /// <param name="advice">The advice.</param>
    public static RankedPlan? Usual(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return advice.Ranked.FirstOrDefault(r => ArticleTrait.IsArticle(r.Plan.Aid));
    }

    /// <summary>What to look for on this advice, with what comes first where nothing need be bought.</summary>
    /// <param name="advice">The advice, with no red flag.</param>
    /// <param name="ranked">The plan; null where there is none of which something is bought.</param>
    /// <param name="demand">What its article must be like; null without a plan.</param>
    public IEnumerable<string> Told(Advice advice, RankedPlan? ranked, ArticleDemand? demand)
    {
        ArgumentNullException.ThrowIfNull(advice);
        if (advice.Ranked.IsEmpty)
        {
            return [NeedText.Sentence(advice), .. NeedText.Arrange(advice)];
        }

        string first = PlanText.Lower(PlanText.Name(advice.Ranked[0].Plan));
        return ranked is null || demand is null ? [Bought(advice.Ranked[0].Plan) is { } bought ? $"No aid has to be bought. First is: {first}. For it {bought}." : $"Nothing has to be bought. First is: {first}."]
            : ArticleTrait.IsArticle(advice.Ranked[0].Plan.Aid) || ranked.Rank == 1 ? Lines(ranked, demand)
            : [Bought(advice.Ranked[0].Plan) is { } only ? $"First comes {first}. For it {only}." : $"First comes what need not be bought: {first}.", .. Lines(ranked, demand)];
    }

    /// <summary>What is bought for a plan without an aid; null for nothing. A rubber band for folded paper is at hand.</summary>
    private static string? Bought(Plan plan) =>
        plan.AddOns.Where(a => !a.PreparesPaper).Select(a => PlanText.Lower(a.Name)).ToList() is { Count: > 0 } names ? $"only this is bought: {names.Humanize("and")}" : null;

    /// <summary>What to look for, in lines.</summary>
    /// <param name="ranked">The plan.</param>
    /// <param name="demand">What its article must be like.</param>
    public IEnumerable<string> Lines(RankedPlan ranked, ArticleDemand demand)
    {
        ArgumentNullException.ThrowIfNull(ranked);
        ArgumentNullException.ThrowIfNull(demand);
        string name = PlanText.Lower(ranked.Plan.Aid.Name);
        if (!ArticleTrait.IsArticle(ranked.Plan.Aid))
        {
            return Bought(ranked.Plan) is { } only ? [$"For this plan {only}.", .. Items(demand)] : [$"Nothing is bought for this plan: {name}."];
        }

        return demand.Lines.Length == 0
            ? [Nothing(name, demand), .. About(ranked, demand)]
            : [Opening(name, demand), .. Tools(demand), .. Items(demand), .. Left(demand), .. About(ranked, demand)];
    }

    /// <summary>The tools that the checks take, in one sentence; nothing where they take none.</summary>
    /// <param name="demand">What the article must be like.</param>
    public IEnumerable<string> Tools(ArticleDemand demand)
    {
        ArgumentNullException.ThrowIfNull(demand);
        var tools = demand.Lines.SelectMany(l => _traits.Tools(l.Trait)).Distinct(StringComparer.Ordinal).ToList();
        return tools.Count == 0 ? [] : [$"Take {tools.Humanize("and")} with you."];
    }

    /// <summary>The numbered lines with their headings, for pages and papers. A check that serves two lines is said once.</summary>
    /// <param name="demand">What the article must be like.</param>
    public IEnumerable<string> Items(ArticleDemand demand)
    {
        ArgumentNullException.ThrowIfNull(demand);
        int number = 0;
        var said = new HashSet<string>(StringComparer.Ordinal);
        (string Heading, ImmutableArray<ArticleLine> Lines)[] parts =
        [
            ("It must have:", demand.Musts),
            ($"{demand.Plan.Companion?.Name}, used after it, must have:", demand.After),
            (demand.IsFirst ? "Better, or another kind comes first:" : "With this it would come first:", demand.Wishes),
        ];
        foreach (var (heading, lines) in parts.Where(p => !p.Lines.IsEmpty))
        {
            yield return heading;
            foreach (var line in lines)
            {
                yield return $"{++number}. {_traits.Sentence(line)}";
                string check = _traits.Check(line.Trait);
                if (said.Add(check))
                {
                    yield return check;
                }
            }
        }
    }

    /// <summary>The same as data.</summary>
    /// <param name="json">Where it goes, inside an object.</param>
    /// <param name="ranked">The plan.</param>
    /// <param name="demand">What its article must be like.</param>
    public void Write(Utf8JsonWriter json, RankedPlan ranked, ArticleDemand demand)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(ranked);
        ArgumentNullException.ThrowIfNull(demand);
        json.WriteNumber("plan", ranked.Rank);
        json.WriteString("aid", ranked.Plan.Aid.Id);
        json.WriteString("name", PlanText.Name(ranked.Plan));
        json.WriteNumber("usableShare", Math.Round(demand.UsableShare, 4));
        json.WriteNumber("sureShare", knowledge.Evidence.Value(EvidenceIds.ReachSureShare));
        json.WriteNumber("leftOut", demand.LeftOut);
        Write(json, "musts", demand.Musts);
        if (!demand.After.IsEmpty)
        {
            json.WriteString("after", ranked.Plan.Companion!.Id);
            Write(json, "mustsAfter", demand.After);
        }

        Write(json, "wishes", demand.Wishes);
    }

    private void Write(Utf8JsonWriter json, string name, IEnumerable<ArticleLine> lines)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("trait", Words.Of(line.Trait.Kind));
            if (line.Trait.Of is { } of)
            {
                json.WriteString("of", of);
            }

            if (line.Trait.IsNumber)
            {
                var unit = TraitText.UnitOf(line.Trait);
                json.WriteString("bound", line.AtLeast ? "at-least" : "at-most");
                json.WriteString("unit", unit.Symbol);
                Number("value", line.Limit);
                Number("sure", line.Sure);

                void Number(string member, double? si)
                {
                    if (si is { } number)
                    {
                        json.WriteNumber(member, Math.Round(unit.FromSi(number), 3));
                    }
                    else
                    {
                        json.WriteNull(member);
                    }
                }
            }

            json.WriteString("text", _traits.Sentence(line));
            json.WriteStrings("tools", _traits.Tools(line.Trait));
            json.WriteString("check", _traits.Check(line.Trait));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Opening(string name, ArticleDemand demand)
    {
        string musts = demand.Musts.IsEmpty ? "nothing it must have" : $"{Count(demand.Musts.Length)} it must have";
        string wishes = demand.Wishes.IsEmpty ? string.Empty : $", {Count(demand.Wishes.Length)} that {(demand.Wishes.Length == 1 ? "is" : "are")} better";
        string after = demand.After.IsEmpty ? string.Empty : $", {Count(demand.After.Length)} that what is used after it must have";
        return $"{Spoken.Capital(name)}: {musts}{after}{wishes}.";
    }

    private static string Nothing(string name, ArticleDemand demand) =>
        $"One {name} is as good as another here: nothing that was looked at would rule it out or put {(demand.IsFirst ? "another kind" : "it")} first.";

    private static string Count(int count) => "thing".ToQuantity(count, ShowQuantityAs.Words);

    /// <summary>For which use it is, what sure means, and what else there is to know before it is bought.</summary>
    private IEnumerable<string> About(RankedPlan ranked, ArticleDemand demand)
    {
        string place = ranked.Rank == 1 ? "first place" : $"place {ranked.Rank}";
        yield return $"For {place}{PlanText.Name(ranked.Plan)[ranked.Plan.Aid.Name.Length..]}.";
        if (demand.Lines.Any(l => l.Sure is not null))
        {
            yield return $"To be sure: it then works for {SureOf} of 100 people who would give these answers.";
        }

        if (ranked.Cautions.Any(c => c.Rule.Severity <= Severity.High))
        {
            yield return "This plan has warnings: hear them with toiletaid rank before it is tried.";
        }

        yield return "Articles much unlike this kind were not looked at. Try it dry and clothed first.";
    }

    private static IEnumerable<string> Left(ArticleDemand demand) => demand.LeftOut == 0 ? []
        : [$"{Spoken.Capital(Count(demand.LeftOut))} more {(demand.LeftOut == 1 ? "is" : "are")} left out, which fewer articles fail."];
}
