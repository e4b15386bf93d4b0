using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>What is saved about one person.</summary>
/// <param name="Person">A code, never a name.</param>
/// <param name="Sessions">Visits, oldest first; at least one.</param>
public sealed record Profile(string Person, ImmutableArray<Session> Sessions)
{
    /// <summary>The newest visit.</summary>
    public Session Latest => Sessions[^1];
}
