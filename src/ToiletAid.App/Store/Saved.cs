using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Store;

/// <summary>What a save led to.</summary>
/// <param name="Stored">The profile as it stands on disk now.</param>
/// <param name="AddedElsewhere">Sessions that somebody else saved since the profile was opened; they were kept.</param>
/// <param name="WasThere">True when the very same session was on disk already, so that nothing was written.</param>
public sealed record Saved(StoredProfile Stored, ImmutableArray<Session> AddedElsewhere, bool WasThere);
