using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Plans;

/// <summary>Tells objects of one kind apart as objects, as <see cref="SamePlan"/> does plans.</summary>
/// <typeparam name="T">The kind.</typeparam>
internal sealed class SameObject<T> : IEqualityComparer<T>
    where T : class
{
    internal static readonly SameObject<T> Comparer = new();

    /// <inheritdoc/>
    public bool Equals(T? x, T? y) => ReferenceEquals(x, y);

    /// <inheritdoc/>
    public int GetHashCode(T of) => RuntimeHelpers.GetHashCode(of);
}
