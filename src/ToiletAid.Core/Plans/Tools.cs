using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Plans;

/// <summary>What is used in a plan, whatever the posture and the way: told apart as objects, for plans of one kind are made of the same.</summary>
/// <param name="Aid">The cleaning method.</param>
/// <param name="Companion">What follows it, or null.</param>
/// <param name="AddOns">Add-ons.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Tools(Aid Aid, Aid? Companion, ImmutableArray<AddOn> AddOns)
{
    /// <summary>What a plan uses.</summary>
    internal static Tools Of(Plan plan) => new(plan.Aid, plan.Companion, plan.AddOns);

    /// <inheritdoc/>
    public bool Equals(Tools other) => ReferenceEquals(Aid, other.Aid) && ReferenceEquals(Companion, other.Companion) && AddOns == other.AddOns;

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = (RuntimeHelpers.GetHashCode(Aid) * 31) + RuntimeHelpers.GetHashCode(Companion);
        return (hash * 31) + RuntimeHelpers.GetHashCode(ImmutableCollectionsMarshal.AsArray(AddOns));
    }
}
