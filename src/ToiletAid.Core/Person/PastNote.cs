using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>A free note with its day.</summary>
/// <param name="Date">Day of the visit.</param>
/// <param name="Lines">The lines as they were typed.</param>
public sealed record PastNote(DateOnly Date, ImmutableArray<string> Lines);
