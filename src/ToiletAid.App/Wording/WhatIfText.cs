using System.Globalization;
using Humanizer;
using ToiletAid.App.Typed;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Wording;

/// <summary>What a change does to first places, as lines to be read aloud.</summary>
public static class WhatIfText
{
    /// <summary>One person whose first place moved.</summary>
    public static string Person(string person, FirstPlaceMove move)
    {
        string from = move.Before is { } b ? PlanText.Method(b.Plan) : "no plan";
        string to = move.After is { } a ? PlanText.Method(a.Plan) : "no plan";
        string why = (move.CarriedBy, move.RuledOut) switch
        {
            ({ } criterion, _) => $" {PlanText.Of(criterion)} carries it.",
            (null, { } rule) => $" What was first is ruled out by {rule.Id}.",
            _ => string.Empty,
        };
        return $"Person {person}: first was {from}, now it is {to}.{why}{(move.IsNew && move.Before is not null ? " It was not offered before." : string.Empty)}";
    }

    /// <summary>The counts.</summary>
    public static IEnumerable<string> Summary(WhatIfTally tally)
    {
        string stopped = tally.Stopped == 0 ? string.Empty : $" {Number(tally.Stopped)} {(tally.Stopped == 1 ? "is" : "are")} stopped by a red flag.";
        yield return $"{People(tally.People)}. Another kind of aid is first for {Number(tally.Changed)}.{stopped}";
        foreach (var (id, before, after) in tally.Kinds)
        {
            yield return $"{Spoken.Capital(tally.Name(id))} is first for {Number(before)} before and {Number(after)} after.";
        }

        foreach (var (id, before, after) in tally.Companions)
        {
            yield return $"{Spoken.Capital(tally.Name(id))} is the second step in the first plan of {Number(before)} before and {Number(after)} after.";
        }

        foreach (var (id, before, after) in tally.AddOns)
        {
            yield return $"Add-on {tally.Name(id)} is in the first plan of {Number(before)} before and {Number(after)} after.";
        }

        foreach (var (from, to, people, why) in tally.Moves)
        {
            string reasons = why.OrderByDescending(w => w.Value).Select(w => $"{Reason(w.Key)} for {Number(w.Value)}").Humanize("and");
            yield return $"From {tally.Name(from)} to {tally.Name(to)}: {People(people)}, through {reasons}.";
        }
    }

    private static string Reason(string why) =>
        Core.Person.Words.Find<Criterion>(why) is { } criterion ? PlanText.Lower(PlanText.Of(criterion)) : why == "not-offered" ? "what is offered" : $"the rule {why}";

    private static string People(long count) => count == 1 ? "1 person" : $"{Number(count)} people";

    private static string Number(long count) => count.ToString("N0", CultureInfo.InvariantCulture);
}
