namespace ToiletAid.Core.Person;

/// <summary>A trial with its day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Trial">The trial.</param>
public sealed record PastTrial(DateOnly Date, Trial Trial);
