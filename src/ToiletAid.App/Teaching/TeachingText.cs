using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using ToiletAid.App.Documents;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Teaching;

namespace ToiletAid.App.Teaching;

/// <summary>Counted statements and rules about a kind in plain sentences, each with the shares that back it.</summary>
/// <param name="words">The words.</param>
internal sealed class TeachingText(TeachingWords words)
{
    /// <summary>Statements about standing behind others are told where few rule the kind out, and not more than these.</summary>
    private const int MostBehind = 2;

    /// <summary>How a kind came out over all people.</summary>
    internal static string Overall(string name, KindTeaching counted, int people) =>
        $"Of {Number(people)} made-up people, {name} came first for {Number(counted.First)} and was ruled out for {Number(counted.RuledOut)}.";

    /// <summary>For whom a kind is good.</summary>
    internal IEnumerable<string> GoodFor(string name, KindTeaching counted, int people)
    {
        foreach (var s in counted.GoodFor)
        {
            yield return $"{Spoken.Capital(name)} suits {words.Who(s.Question, s.Options)}. {For(s)} It comes first for {Shares(s.Count)}.";
        }

        foreach (var s in counted.Near)
        {
            yield return $"{Spoken.Capital(name)} may suit {words.Who(s.Question, s.Options)}. {For(s)} It is one of the first three for {Shares(s.Count)}.";
        }

        if (counted.GoodFor.IsEmpty && counted.Near.IsEmpty)
        {
            yield return $"No one answer speaks for {name}. It can still be the best for one person.";
            foreach (var other in counted.Others)
            {
                yield return $"Of the {Number(people - counted.RuledOut)} who can use it, {words.Kinds[other.Kind]} came first for {Number(other.First)}. It was mostly ahead in {words.Gains[other.Because]}.";
            }
        }
    }

    /// <summary>For whom kinds are ruled out by the rules alone, told once for all kinds that a rule stands for.</summary>
    internal IEnumerable<string> AlwaysRuledOut(IEnumerable<(string Name, IReadOnlyCollection<KindRule> Rules)> kinds)
    {
        var each = kinds.SelectMany(k => k.Rules.Where(r => r.Question is not null).GroupBy(r => words.Who(r.Question!, r.Options), StringComparer.Ordinal)
            .Select(same => (k.Name, Who: same.Key, Why: same.Select(r => words.WouldNot[r.Finding.Rule.Id]).Distinct(StringComparer.Ordinal).ToImmutableArray())));
        foreach (var group in each.GroupBy(e => (e.Who, Why: string.Join('\n', e.Why))).OrderByDescending(g => g.Count()))
        {
            bool one = group.Count() == 1;
            yield return $"{Spoken.Capital(group.Select(e => e.Name).Humanize("and"))} {(one ? "is" : "are")} always ruled out for {group.Key.Who}. "
                + string.Join(' ', group.First().Why.Select(w => $"{(one ? "It" : "Each")} would {w}."));
        }
    }

    /// <summary>For whom a kind is not, as counted, besides what the rules say by themselves.</summary>
    internal IEnumerable<string> NotFor(string name, KindTeaching? counted, IReadOnlyCollection<KindRule> rules)
    {
        var told = (counted?.NotFor ?? []).Where(s => !rules.Any(r => r.Question == s.Question && s.Options.All(r.Options.Contains))).ToList();
        foreach (var s in told)
        {
            yield return $"{Spoken.Capital(name)} is {(s.Count.HitsWith == s.Count.With ? string.Empty : "often ")}ruled out for {words.Who(s.Question, s.Options)}. "
                + $"It would {words.WouldNot[s.Because]}. That is so for {Shares(s.Count)}.";
        }

        foreach (var s in (counted?.Behind ?? []).Take(MostBehind))
        {
            yield return $"Other kinds mostly come before {name} for {words.Who(s.Question, s.Options)}. It loses most in {words.Gains[s.Because]}. "
                + $"Of those who can use it, that is so for {Shares(s.Count)}.";
        }
    }

    /// <summary>A warning that a kind brings, and to whom it is said.</summary>
    internal string Caution(KindRule rule) =>
        $"Say to {(rule.Question is { } question ? words.Who(question, rule.Options) : "everybody")}: {PlainRules.Of(rule.Finding, toHelper: false)}";

    private string For(TeachingStatement s) => s.By switch
    {
        TeachingCause.Itself => $"For others it would often {words.WouldNot[s.Because]}.",
        TeachingCause.Others => $"For them some of the other kinds would {words.WouldNot[s.Because]}.",
        _ => $"It gains most in {words.Gains[s.Because]}.",
    };

    private static string Shares(HitCount count) =>
        $"{(count.HitsWith == count.With ? "all" : SlotText.OfHundred(count.ShareWith) + " of 100")} of them, and for {SlotText.OfHundred(count.ShareWithout)} of 100 others";

    /// <summary>Thousands apart, as they are read.</summary>
    private static string Number(int number) => number.ToString("#,0", CultureInfo.InvariantCulture);
}
