using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Safety;

/// <summary>A row of the hazard table, ready to be looked at.</summary>
public sealed record RuleCheck
{
    private readonly Condition _brings;
    private readonly Condition _exposed;

    internal RuleCheck(Rule rule, Condition brings, Condition exposed)
    {
        Rule = rule;
        _brings = brings;
        _exposed = exposed;
        DependsOnHand = brings.Features.Any(f => f.DependsOnHand);
        DependsOnReach = brings.Features.Any(f => f.DependsOnReach);
        OfThePerson = brings is Condition.Always;
    }

    /// <summary>The words.</summary>
    public Rule Rule { get; }

    /// <summary>Id of the rule.</summary>
    public string Id => Rule.Id;

    /// <summary>True when it looks at what the hand does, which is drawn together with the values.</summary>
    public bool DependsOnHand { get; }

    /// <summary>True when it looks at how far the hand reaches.</summary>
    public bool DependsOnReach { get; }

    /// <summary>True when it holds for every plan of the person alike.</summary>
    public bool OfThePerson { get; }

    /// <summary>Questions whose answers it looks at.</summary>
    internal IEnumerable<string> Questions => _brings.Questions.Concat(_exposed.Questions).Distinct(StringComparer.Ordinal);

    /// <summary>Whether it applies: the plan brings it, and the person is exposed to it.</summary>
    /// <param name="context">Person and plan.</param>
    public RuleOutcome Check(RuleContext context)
    {
        var brought = _brings.Of(context);
        return brought.Applies == false ? brought : brought & _exposed.Of(context);
    }
}
