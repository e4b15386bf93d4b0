using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Files;

/// <summary>Limits of change, as in the file.</summary>
internal sealed record ChangesFile(ImmutableArray<DetectableChange> Changes);
