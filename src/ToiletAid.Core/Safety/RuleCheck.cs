using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Safety;

/// <summary>A row of the hazard table, ready to be looked at.</summary>
public sealed record RuleCheck
{
    private readonly Condition _brings;
    private readonly Condition _exposed;
    private readonly bool _exposedByAnswers;

    internal RuleCheck(Rule rule, Condition brings, Condition exposed)
    {
        Rule = rule;
        _brings = brings;
        _exposed = exposed;
        Questions = [.. brings.Questions.Concat(exposed.Questions).Distinct()];
        DependsOnHand = brings.Features.Any(f => f.DependsOnHand);
        DependsOnGrip = DependsOnHand || Questions.Contains(QuestionIds.Grip);
        DependsOnReach = brings.Features.Any(f => f.DependsOnReach);
        OfThePerson = brings is Condition.Always;
        OfTools = brings.Features.Concat(exposed.Features).All(f => f.OfTools);
        _exposedByAnswers = !exposed.Features.Any();
    }

    /// <summary>The words.</summary>
    public Rule Rule { get; }

    /// <summary>Id of the rule.</summary>
    public string Id => Rule.Id;

    /// <summary>True when it looks at what the hand does, which is drawn together with the values.</summary>
    public bool DependsOnHand { get; }

    /// <summary>True when how strong the hand is can change it.</summary>
    internal bool DependsOnGrip { get; }

    /// <summary>True when it looks at how far the hand reaches.</summary>
    public bool DependsOnReach { get; }

    /// <summary>True when it holds for every plan of the person alike.</summary>
    public bool OfThePerson { get; }

    /// <summary>True when it looks at nothing of the plan but what is used in it, and at answers.</summary>
    internal bool OfTools { get; }

    /// <summary>Questions whose answers it looks at.</summary>
    internal ImmutableArray<QuestionId> Questions { get; }

    /// <summary>Whether it applies: the plan brings it, and the person is exposed to it.</summary>
    /// <param name="context">Person and plan.</param>
    public RuleOutcome Check(RuleContext context) => Check(context, null);

    /// <summary>Whether the person is exposed, as far as that is the same for every plan; null where it takes the plan to tell.</summary>
    /// <param name="person">The person; the plan is not looked at.</param>
    internal RuleOutcome? Exposed(RuleContext person) => _exposedByAnswers ? _exposed.Of(person) : null;

    /// <summary>The same as <see cref="Check(RuleContext)"/>, with what <see cref="Exposed"/> said.</summary>
    internal RuleOutcome Check(RuleContext context, RuleOutcome? exposed)
    {
        var brought = _brings.Of(context);
        return brought.Applies == false ? brought : brought & (exposed ?? _exposed.Of(context));
    }
}
