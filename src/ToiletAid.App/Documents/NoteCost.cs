using System.Globalization;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Cost;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Documents;

/// <summary>What a plan costs, whose prices these are, and why a cheaper or simpler one was not taken.</summary>
/// <param name="about">What the note is about.</param>
/// <param name="chosen">The plan that was taken.</param>
internal sealed class NoteCost(Case about, RankedPlan chosen)
{
    /// <summary>A plan counts as cheaper from this part of the cost on (decision).</summary>
    private const double Cheaper = 0.9;

    private const int MonthsInYear = 12;

    private readonly DocumentData _words = about.Words;

    /// <summary>Purchase and month, and whose prices.</summary>
    internal string Cost()
    {
        var (plan, month) = (chosen.Plan, Running(chosen));
        Sourced[] prices = [.. Prices(plan)];
        double buy = prices.Sum(p => p.Value);
        bool placeholder = chosen.Setup.MonthlyCost.HasPlaceholder || prices.Any(p => p.High > 0 && p.Basis == Basis.Estimate);
        string whose = _words.Text(placeholder ? "note.cost.list" : "note.cost.own");
        return buy > 0 ? _words.Text(
                "note.cost.buy", ("price", Money(buy)), ("low", Money(prices.Sum(p => p.Low))), ("high", Money(prices.Sum(p => p.High))), ("month", Money(month)), ("whose", whose))
            : month > 0 ? _words.Text("note.cost.run", ("month", Money(month)), ("whose", whose))
            : _words.Text("note.cost.free");
    }

    /// <summary>Why not the cheapest or the simplest one, a sentence or two.</summary>
    internal IEnumerable<string> WhyNot()
    {
        if (chosen.Rank > 1)
        {
            // Why another place was taken is the therapist's to say.
            yield break;
        }

        double mine = Year(chosen);
        var cheapest = about.Advice.Ranked.Where(r => r.Plan.Aid.Method != MethodKind.Helper && !ReferenceEquals(r, chosen)).MinBy(Year);
        var hand = about.Advice.Need == AidNeed.Better ? about.Advice.Ranked.FirstOrDefault(r => r.Plan.Aid is { Reach: ReachKind.BareHand, Paper: not null }) : null;
        if (hand is not null && !ReferenceEquals(hand, cheapest) && Cause(hand) is { } cause)
        {
            yield return _words.Text("note.simpler", ("why", cause));
        }

        if (chosen.Plan.Aid.Method == MethodKind.Helper || mine <= 0)
        {
            yield break;
        }

        yield return cheapest is null || Year(cheapest) > Cheaper * mine
            ? _words.Text("note.cheaper.none")
            : _words.Text(
                "note.cheaper",
                ("other", PlanText.The(cheapest.Plan)), ("theirs", Money(Year(cheapest))), ("mine", Money(mine)), ("cause", PlanText.Lower(Cause(cheapest) ?? _words.Text("note.cheaper.ranked"))));
    }

    /// <summary>What speaks most for the plan that was taken beside another one, as a sentence.</summary>
    private string? Cause(RankedPlan other)
    {
        var causes = new CauseText(about.Session.Answers);
        return Enumerable.Range(0, chosen.Criteria.Length)
            .Select(c => (Criterion: (Criterion)c, By: about.Advice.Weights[c] * (chosen.Criteria[c] - other.Criteria[c])))
            .Where(c => c.By > 0)
            .OrderByDescending(c => c.By)
            .Select(c => causes.Of(c.Criterion, chosen, other))
            .OfType<string>()
            .Select(cause => cause + ".")
            .FirstOrDefault();
    }

    private static IEnumerable<Sourced> Prices(Plan plan) => plan.Methods.Select(m => m.Upkeep.Price).Concat(plan.AddOns.Select(a => a.Upkeep.Price));

    private static double Running(RankedPlan plan) => plan.Setup.MonthlyCost.Parts.Where(p => p.Kind != CostKind.Purchase).Sum(p => p.Value);

    private static double Year(RankedPlan plan) => Prices(plan.Plan).Sum(p => p.Value) + (MonthsInYear * Running(plan));

    private static string Money(double amount) => Math.Round(amount, amount < 10 ? 1 : 0).ToString("0.#", CultureInfo.InvariantCulture);
}
