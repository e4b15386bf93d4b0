using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Wording;

/// <summary>Why kinds are ruled out is said once for each reason, whatever their own numbers; and causes fit who does the cleaning.</summary>
public sealed class RuledOutTextTests
{
    /// <summary>The way of an approach may differ between kinds that are too short, so that this reason may come more than once.</summary>
    private const string ByApproach = "too-short";

    private static IEnumerable<(Answers Known, Advice Advice)> People(int count)
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        var advisor = new Advisor(Cases.Knowledge, new() { ValueDraws = 8, WeightDraws = 400 });
        return Enumerable.Range(0, count).Select(i => simulator.Make(11, i, Depth.Full, new(2026, 3, 9)).Latest.Answers).Select(known => (known, advisor.Advise(known)));
    }

    [Fact]
    public void A_reason_with_numbers_of_its_own_for_each_kind_is_said_once()
    {
        int together = 0;
        foreach (var (_, advice) in People(60).Where(p => p.Advice.RuledOut.All(r => r.Reasons[0].Rule.Id != ByApproach)))
        {
            string[] lines = [.. RuledOutText.Groups(advice)];
            string[] reasons = [.. advice.RuledOut.Select(r => RuledOutText.OfSeveral.ContainsKey(r.Reasons[0].Rule.Id) ? r.Reasons[0].Rule.Id : AdviceText.Sentence(r.Reasons[0])).Distinct()];
            Assert.True(lines.Length == reasons.Length, string.Join('\n', lines));
            together += lines.Count(l => RuledOutText.OfSeveral.Values.Any(t => l.Contains(t.Split('{')[0], StringComparison.Ordinal)));
        }

        Assert.True(together > 0, "nobody had a reason that is said of several");
    }

    [Fact]
    public void What_is_said_of_several_belongs_to_rules_that_rule_out() =>
        Assert.All(RuledOutText.OfSeveral.Keys, id => Assert.Contains(Cases.Knowledge.Rules.All, r => r.Id == id && r.Kind == RuleKind.RulesOut));

    /// <summary>The answer names both in one option, or the surgical team forbids both.</summary>
    [Fact]
    public void What_rules_out_says_or_only_where_nobody_knows_which() =>
        Assert.Equal(
            ["brittle-spine", "hip-extension-limit", "wipes-allergy"],
            Cases.Knowledge.Rules.All.Where(r => r.Kind == RuleKind.RulesOut && r.Text.Contains(" or ", StringComparison.Ordinal)).Select(r => r.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Where_another_person_cleans_first_the_cause_is_what_the_person_cannot_do()
    {
        int seen = 0;
        foreach (var (known, advice) in People(120).Where(p => p.Advice.Ranked is [{ Plan.Aid.Method: MethodKind.Helper }, _, ..]))
        {
            seen++;
            var causes = new CauseText(known);
            foreach (var criterion in Enum.GetValues<Criterion>())
            {
                string? cause = causes.Of(criterion, advice.Ranked[0], advice.Ranked[1]);
                Assert.True(cause is null || cause.Contains("would be long enough", StringComparison.Ordinal) || cause.StartsWith("With ", StringComparison.Ordinal) || cause.StartsWith("The person has no steps", StringComparison.Ordinal), cause);
            }
        }

        Assert.True(seen > 0, "nobody is cleaned by another person first");
    }
}
