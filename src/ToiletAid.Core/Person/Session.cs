using ToiletAid.Core.Interview;

namespace ToiletAid.Core.Person;

/// <summary>One visit.</summary>
/// <param name="Date">Day of the visit.</param>
/// <param name="Depth">How much was asked.</param>
/// <param name="Answers">What was answered.</param>
public sealed record Session(DateOnly Date, Depth Depth, Answers Answers);
