using System.Collections;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Plans;

/// <summary>Both methods of a plan, or the one. It asks them itself, because general sequences make garbage and plans are valued by the thousand.</summary>
/// <param name="first">The cleaning method.</param>
/// <param name="second">What follows it, or null.</param>
public readonly struct PlanMethods(Aid first, Aid? second) : IEnumerable<Aid>
{
    /// <summary>True when it holds for one of them.</summary>
    /// <param name="holds">What is asked of a method.</param>
    /// <exception cref="ArgumentNullException"><paramref name="holds"/> is null.</exception>
    public bool Any(Func<Aid, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        return holds(first) || (second is not null && holds(second));
    }

    /// <summary>True when it holds for all of them.</summary>
    /// <param name="holds">What is asked of a method.</param>
    /// <exception cref="ArgumentNullException"><paramref name="holds"/> is null.</exception>
    public bool All(Func<Aid, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        return holds(first) && (second is null || holds(second));
    }

    /// <summary>The greater of the methods' numbers.</summary>
    /// <param name="of">The number of a method; asked once for each.</param>
    /// <returns>In the unit of <paramref name="of"/>; NaN when one of them is.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="of"/> is null.</exception>
    public double Max(Func<Aid, double> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return second is null ? of(first) : Math.Max(of(first), of(second));
    }

    /// <summary>The smaller of the methods' numbers.</summary>
    /// <param name="of">The number of a method; asked once for each.</param>
    /// <returns>In the unit of <paramref name="of"/>; NaN when one of them is.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="of"/> is null.</exception>
    public double Min(Func<Aid, double> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return second is null ? of(first) : Math.Min(of(first), of(second));
    }

    /// <summary>The methods' numbers added, the cleaning method first.</summary>
    /// <param name="of">The number of a method; asked once for each.</param>
    /// <returns>In the unit of <paramref name="of"/>.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="of"/> is null.</exception>
    public double Sum(Func<Aid, double> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return second is null ? of(first) : of(first) + of(second);
    }

    /// <inheritdoc/>
    public IEnumerator<Aid> GetEnumerator() => ((IEnumerable<Aid>)(second is null ? [first] : [first, second])).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
