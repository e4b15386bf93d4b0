using System.Collections.Immutable;

namespace ToiletAid.App.Store;

/// <summary>What was erased.</summary>
/// <param name="Files">Names of the files.</param>
/// <param name="NotOverwritten">Those of them that have other names on the disk, as backups make them: what is under these was left as it is.</param>
/// <param name="StillThere">Names of files that the profile no longer has but the disk could not overwrite and remove: they go with the next use of the folder.</param>
public sealed record Erased(ImmutableArray<string> Files, ImmutableArray<string> NotOverwritten, ImmutableArray<string> StillThere);
