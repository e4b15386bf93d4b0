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
    /// <summary>Whether the answer to a question with one choice is one of these; unclear while it is not known, or answered by a number.</summary>
    /// <param name="question">Id of the question.</param>
    /// <param name="options">Ids of options.</param>
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

    /// <summary>Whether the answer to a question with many choices holds this one; unclear while it is not known.</summary>
    /// <param name="question">Id of the question.</param>
    /// <param name="option">Id of the option.</param>
    public RuleOutcome Has(string question, string option) =>
        Known.Many(question) is not { } many ? RuleOutcome.Unclear(question) : RuleOutcome.If(many.Contains(option));

    /// <summary>A limit or coefficient, SI.</summary>
    /// <param name="evidence">Id of the entry.</param>
    /// <exception cref="KeyNotFoundException">No such entry.</exception>
    public double Value(string evidence) => Knowledge.Evidence.Value(evidence);
}
