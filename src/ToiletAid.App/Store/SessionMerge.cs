using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>Puts sessions together. Sessions are only ever added, so two versions of a profile never contradict each other.</summary>
internal static class SessionMerge
{
    /// <summary>The sessions of <paramref name="from"/> that <paramref name="have"/> lacks. Two with the same day, depth and answers are one.</summary>
    internal static ImmutableArray<Session> Missing(IEnumerable<Session> have, IEnumerable<Session> from, ProfileWriter writer)
    {
        var known = have.Select(writer.Text).ToHashSet(StringComparer.Ordinal);
        return [.. from.Where(s => known.Add(writer.Text(s)))];
    }

    /// <summary>All sessions in the order in which they were saved: dates are typed, and clocks are set back.</summary>
    internal static ImmutableArray<Session> Together(IEnumerable<Session> have, IEnumerable<Session> added) => [.. have, .. added];
}
