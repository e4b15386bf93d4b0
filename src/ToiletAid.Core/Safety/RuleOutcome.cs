using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Safety;

/// <summary>Whether a rule applies, does not, or cannot tell before a question is answered.</summary>
/// <param name="Applies">True when it applies, false when it does not, null when it cannot tell.</param>
/// <param name="Needs">Questions without whose answers it cannot tell; empty when it can.</param>
/// <param name="Slots">Numbers and words of the case for its sentence.</param>
public sealed record RuleOutcome(bool? Applies, ImmutableArray<QuestionId> Needs, ImmutableArray<Slot> Slots)
{
    /// <summary>It applies.</summary>
    public static readonly RuleOutcome Yes = new(true, [], []);

    /// <summary>It does not apply.</summary>
    public static readonly RuleOutcome No = new(false, [], []);

    /// <summary>It cannot tell without the answer to <paramref name="question"/>.</summary>
    public static RuleOutcome Unclear(QuestionId question) => new(null, [question], []);

    /// <summary>It applies or not.</summary>
    public static RuleOutcome If(bool applies) => applies ? Yes : No;

    /// <summary>The same outcome with numbers of the case for its sentence.</summary>
    public RuleOutcome With(params ImmutableArray<Slot> slots) => this with { Slots = slots };

    /// <summary>Both apply; one that does not settles it.</summary>
    public static RuleOutcome operator &(RuleOutcome left, RuleOutcome right) =>
        left.Applies == false || right.Applies == false ? No
        : ReferenceEquals(left, Yes) ? right
        : ReferenceEquals(right, Yes) ? left
        : left.Applies == true && right.Applies == true ? new(true, [], [.. left.Slots, .. right.Slots])
        : new(null, [.. left.Needs.Union(right.Needs)], []);

    /// <summary>One of them applies; one that does settles it.</summary>
    public static RuleOutcome operator |(RuleOutcome left, RuleOutcome right) =>
        left.Applies == true ? left
        : right.Applies == true ? right
        : left.Applies == false ? right
        : right.Applies == false ? left
        : new(null, [.. left.Needs.Union(right.Needs)], []);

    /// <summary>The opposite; what cannot be told stays so.</summary>
    public static RuleOutcome operator !(RuleOutcome outcome) =>
        outcome.Applies is { } applies ? If(!applies) : outcome;
}
