using System.Collections.Immutable;

namespace ToiletAid.Core.Safety;

/// <summary>Something that a whole plan may bring: a method in it, main or companion, an add-on, the posture, the approach, or what it asks of this person.</summary>
/// <param name="Name">Name in the hazard table, kebab-case.</param>
/// <param name="Of">Whether the plan has it, with numbers of the case; it cannot tell where an answer is missing.</param>
public sealed record PlanFeature(string Name, Func<RuleContext, RuleOutcome> Of)
{
    /// <summary>True when it looks at what the hand does, which is drawn together with the values.</summary>
    public bool DependsOnHand { get; init; }

    /// <summary>True when it looks at how far the hand reaches, and of the plan besides at its posture and way only.</summary>
    public bool DependsOnReach { get; init; }

    /// <summary>True when it looks at nothing of the plan but what is used in it, whatever the posture and the way.</summary>
    public bool OfTools { get; init; }

    /// <summary>Names of the slots that it fills.</summary>
    public ImmutableArray<string> Slots { get => field.IsDefault ? [] : field; init; }
}
