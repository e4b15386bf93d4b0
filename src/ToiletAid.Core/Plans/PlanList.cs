namespace ToiletAid.Core.Plans;

/// <summary>Plans of one kind, with keys that are made where they are looked at, and once.</summary>
/// <param name="plans">The plans; not to be changed.</param>
internal sealed class PlanList(Plan[] plans)
{
    private readonly string?[] _keys = new string?[plans.Length];

    /// <summary>The plans.</summary>
    internal ReadOnlySpan<Plan> Plans => plans;

    /// <summary>Key of one of them.</summary>
    internal string Key(int plan) => _keys[plan] ??= plans[plan].Key;
}
