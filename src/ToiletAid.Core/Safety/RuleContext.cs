using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Safety;

/// <summary>What a rule looks at: what is known, the plan, and what the plan asks for.</summary>
/// <param name="Knowledge">Questions and limits.</param>
/// <param name="Known">Answers as given; nothing assumed.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Demands">What it asks for.</param>
public sealed record RuleContext(KnowledgeBase Knowledge, Answers Known, Plan Plan, PlanDemands Demands)
{
    /// <summary>Whether the answer to a question with one choice is this one; unclear while it is not known, or answered by a number.</summary>
    /// <param name="option">The option, with its question.</param>
    public RuleOutcome Is(OptionId option) =>
        Known.Choice(option.Question) is { } choice ? RuleOutcome.If(choice == option.Text) : RuleOutcome.Unclear(option.Question);

    /// <summary>Whether the answer to a question with many choices holds this one; unclear while it is not known.</summary>
    /// <param name="option">The option, with its question.</param>
    public RuleOutcome Has(OptionId option) =>
        Known.Many(option.Question) is { } many ? RuleOutcome.If(many.Contains(option.Text)) : RuleOutcome.Unclear(option.Question);

    /// <summary>A limit or coefficient, SI.</summary>
    /// <param name="id">The entry.</param>
    public double Value(EvidenceId id) => Knowledge.Evidence.Value(id);
}
