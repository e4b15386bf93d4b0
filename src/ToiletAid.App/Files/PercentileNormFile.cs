using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;

namespace ToiletAid.App.Files;

/// <summary>A norm table with percentiles, as in the file: values in its unit.</summary>
internal sealed record PercentileNormFile(
    string Unit, Basis Basis, string Source, ImmutableArray<double> Percentiles, ImmutableArray<NormRow> Rows);
