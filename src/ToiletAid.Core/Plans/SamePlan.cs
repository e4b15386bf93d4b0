using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Plans;

/// <summary>Tells plans apart as objects: plans are kept and met again, and comparing all that is in them takes longer than what is kept for them.</summary>
/// <remarks>The library's own comparer is for any object, and calling it for one kind of them takes many times as long.</remarks>
internal sealed class SamePlan : IEqualityComparer<Plan>
{
    internal static readonly SamePlan Object = new();

    /// <inheritdoc/>
    public bool Equals(Plan? x, Plan? y) => ReferenceEquals(x, y);

    /// <inheritdoc/>
    public int GetHashCode(Plan of) => RuntimeHelpers.GetHashCode(of);
}
