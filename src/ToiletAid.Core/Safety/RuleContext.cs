using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Safety;

/// <summary>What a rule looks at: what is known, the plan, and what the plan asks for.</summary>
/// <param name="Knowledge">Questions and limits.</param>
/// <param name="Known">Answers as given; nothing assumed.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Demands">What it asks for.</param>
public sealed record RuleContext(Knowledge Knowledge, Answers Known, Plan Plan, PlanDemands Demands)
{
    /// <summary>Whether the answer to a question with one choice is one of these.</summary>
    /// <exception cref="ArgumentException">The question has no such option: a fault in a rule.</exception>
    public RuleOutcome Is(string question, params ReadOnlySpan<string> options)
    {
        string? choice = Known.Choice(question);
        if (choice is null)
        {
            return RuleOutcome.Unclear(question);
        }

        foreach (string option in options)
        {
            if (choice == option)
            {
                return RuleOutcome.Yes;
            }
        }

        return RuleOutcome.No;
    }

    /// <summary>Whether the answer to a question with many choices holds this one.</summary>
    public RuleOutcome Has(string question, string option) =>
        Known.Many(question) is not { } many ? RuleOutcome.Unclear(question) : RuleOutcome.If(many.Contains(option));

    /// <summary>A limit or coefficient, SI.</summary>
    public double Value(string evidence) => Knowledge.Evidence.Value(evidence);
}
