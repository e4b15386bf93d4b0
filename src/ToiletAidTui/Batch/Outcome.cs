using System.Collections.Immutable;
using ToiletAid.App.Files;

namespace ToiletAidTui.Batch;

/// <summary>What became of one profile.</summary>
/// <typeparam name="T">What was wanted.</typeparam>
/// <param name="Input">The profile before it was read.</param>
/// <param name="Value">What was wanted; null when there are issues.</param>
/// <param name="Issues">Why it was refused.</param>
/// <param name="OurFault">True when the program failed on it, not the profile.</param>
internal sealed record Outcome<T>(BatchInput Input, T? Value, ImmutableArray<Issue> Issues, bool OurFault = false)
    where T : class;
