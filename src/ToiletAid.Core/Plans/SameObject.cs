using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Plans;

/// <summary>Tells objects of one kind apart as objects: plans and aids are kept and met again, and comparing all that is in them takes longer than
/// what is kept for them.</summary>
/// <remarks>The library's own comparer is for any object, and calling it for one kind of them takes many times as long.</remarks>
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
