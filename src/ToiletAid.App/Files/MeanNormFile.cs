using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;

namespace ToiletAid.App.Files;

/// <summary>A norm table with means and standard deviations, as in the file: values in its unit.</summary>
internal sealed record MeanNormFile(string Unit, Basis Basis, string Source, ImmutableArray<MeanRow> Rows);
