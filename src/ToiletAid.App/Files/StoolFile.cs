using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Paper;

namespace ToiletAid.App.Files;

/// <summary>Paper by stool type, as in the file.</summary>
internal sealed record StoolFile(Basis Basis, string Source, ImmutableArray<StoolPaper> Rows);
