using System.Collections.Concurrent;
using System.Globalization;
using Humanizer;

namespace ToiletAid.App.Wording;

/// <summary>A number with its noun. The forms of a noun are worked out once: it takes many patterns, and a result names the same few nouns again and again.</summary>
internal static class Counted
{
    private static readonly ConcurrentDictionary<(string Noun, bool IsOne), string> Forms = new();

    /// <summary>Such as 1 step, 3 steps.</summary>
    /// <param name="noun">The noun, one of them.</param>
    /// <param name="count">How many.</param>
    internal static string Counting(this string noun, int count) => string.Create(
        CultureInfo.CurrentCulture, $"{count} {Forms.GetOrAdd((noun, count is 1 or -1), f => f.Noun.ToQuantity(f.IsOne ? 1 : 2, ShowQuantityAs.None))}");
}
