namespace ToiletAid.Core.Safety;

/// <summary>What rules said, in the order of <see cref="HandTasks.MayRuleOut"/>, each asked once.</summary>
/// <param name="rules">How many there are.</param>
internal sealed class RuleOutcomes(int rules)
{
    private readonly RuleOutcome?[] _outcomes = new RuleOutcome?[rules];

    /// <summary>How many of those that were asked apply.</summary>
    internal int Applying { get; private set; }

    /// <summary>What one said; null where it was not asked.</summary>
    internal RuleOutcome? this[int rule] => _outcomes[rule];

    /// <summary>What one says.</summary>
    /// <param name="rule">Its number.</param>
    /// <param name="check">The rule.</param>
    /// <param name="context">Person and plan.</param>
    /// <param name="exposed">Whether the person is exposed, where that is the same for every plan.</param>
    internal RuleOutcome Of(int rule, RuleCheck check, RuleContext context, RuleOutcome? exposed)
    {
        if (_outcomes[rule] is { } kept)
        {
            return kept;
        }

        var outcome = check.Check(context, exposed);
        Applying += outcome.Applies == true ? 1 : 0;
        return _outcomes[rule] = outcome;
    }
}
