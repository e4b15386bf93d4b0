using System.Collections;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Plans;

/// <summary>Both methods of a plan, or the one. It asks them itself, because general sequences make garbage and plans are valued by the thousand.</summary>
/// <param name="first">The cleaning method.</param>
/// <param name="second">What follows it, or null.</param>
public readonly struct PlanMethods(Aid first, Aid? second) : IEnumerable<Aid>
{
    /// <summary>True when it holds for one of them.</summary>
    public bool Any(Func<Aid, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        return holds(first) || (second is not null && holds(second));
    }

    /// <summary>True when it holds for all of them.</summary>
    public bool All(Func<Aid, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        return holds(first) && (second is null || holds(second));
    }

    /// <summary>The greatest number.</summary>
    public double Max(Func<Aid, double> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return second is null ? of(first) : Math.Max(of(first), of(second));
    }

    /// <summary>The least number.</summary>
    public double Min(Func<Aid, double> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return second is null ? of(first) : Math.Min(of(first), of(second));
    }

    /// <summary>All of it together.</summary>
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
