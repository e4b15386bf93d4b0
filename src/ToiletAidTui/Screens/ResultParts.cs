using System.Collections.Immutable;
using ToiletAid.App.Wording;

namespace ToiletAidTui.Screens;

/// <summary>A result as the screens show it.</summary>
/// <param name="Brief">The brief result, a sentence a line.</param>
/// <param name="Place">What stands first, for the answer line: it is all that a braille display shows.</param>
/// <param name="Levels">What stands behind it.</param>
internal sealed record ResultParts(ImmutableArray<string> Brief, string Place, ImmutableArray<ResultLevel> Levels);
