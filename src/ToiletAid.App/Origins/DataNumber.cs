using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Origins;

/// <summary>One number of the built-in data; a value with its low and high is one.</summary>
/// <param name="File">File that it stands in.</param>
/// <param name="Place">Members on the way to it, with dots between them.</param>
/// <param name="Basis">What kind of knowledge it is; null where nothing says so, which a test forbids.</param>
/// <param name="Source">Where it comes from; null as above.</param>
/// <param name="IsOwn">False when basis and source are those of the whole file.</param>
public sealed record DataNumber(string File, string Place, Basis? Basis, string? Source, bool IsOwn);
