using System.Collections.Immutable;

namespace ToiletAid.App.Wording;

/// <summary>One level of detail behind the brief result.</summary>
/// <param name="Title">What it is, such as Cautions; short enough for a list of choices.</param>
/// <param name="Lines">A sentence or two a line.</param>
public sealed record ResultLevel(string Title, ImmutableArray<string> Lines);
