using System.Collections.Immutable;

namespace ToiletAidTui.Screens;

/// <summary>One part of a result.</summary>
/// <param name="Title">What it is, such as Cautions.</param>
/// <param name="Lines">A sentence a line.</param>
internal sealed record ResultPart(string Title, ImmutableArray<string> Lines);
