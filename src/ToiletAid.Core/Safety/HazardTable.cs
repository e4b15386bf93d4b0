using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Safety;

/// <summary>The hazard table, ready to be looked at: for each hazard who is exposed to it, what of the whole plan brings it, what follows, and in which words.</summary>
public sealed class HazardTable
{
    /// <summary>Reads the conditions of every row.</summary>
    /// <param name="rules">Rows.</param>
    /// <param name="questions">Questions on whose answers they rest.</param>
    /// <param name="evidence">Limits that they name.</param>
    /// <exception cref="ArgumentException">A condition names what is not there, a stop looks at a plan, words ask of hands what they may not be able to do without saying what then, or a sentence has a slot that nothing fills.</exception>
    public HazardTable(RuleBook rules, QuestionSet questions, EvidenceTable evidence)
    {
        var checks = ImmutableArray.CreateBuilder<RuleCheck>(rules.All.Length);
        foreach (var rule in rules.All)
        {
            var brings = ConditionReader.Read(rule.Brings, questions, evidence);
            if (rule.Kind == RuleKind.Stop && brings is not Condition.Always)
            {
                throw new ArgumentException($"the stop {rule.Id} looks at a plan", nameof(rules));
            }

            if (rule.Hands is null != rule.Helped is null)
            {
                throw new ArgumentException($"{rule.Id} asks something of the hands and has no words for hands that cannot, or the other way round", nameof(rules));
            }

            foreach (string? text in (ReadOnlySpan<string?>)[rule.Text, rule.Brief, rule.Person, rule.Helper, rule.Helped?.Text, rule.Helped?.Brief, rule.Helped?.Person, rule.Helped?.Helper, rule.Alone?.Text, rule.Alone?.Brief, rule.Alone?.Person])
            {
                if (text is not null && Slots(text).FirstOrDefault(s => !brings.Features.Any(f => f.Slots.Contains(s))) is { } lost)
                {
                    throw new ArgumentException($"nothing that brings {rule.Id} fills the slot {lost}", nameof(rules));
                }
            }

            checks.Add(new(rule, brings, ConditionReader.Read(rule.Exposed, questions, evidence)));
        }

        Stops = [.. checks.Where(c => c.Rule.Kind == RuleKind.Stop)];
        RulesOut = [.. checks.Where(c => c.Rule.Kind == RuleKind.RulesOut)];
        Cautions = [.. checks.Where(c => c.Rule.Kind == RuleKind.Caution)];
    }

    /// <summary>What stops everything.</summary>
    public ImmutableArray<RuleCheck> Stops { get; }

    /// <summary>What rules a plan out, the plainest reason first.</summary>
    public ImmutableArray<RuleCheck> RulesOut { get; }

    /// <summary>What a plan is warned of.</summary>
    public ImmutableArray<RuleCheck> Cautions { get; }

    private static IEnumerable<string> Slots(string text) => text.Split('{').Skip(1).Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)]);
}
