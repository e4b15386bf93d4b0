using ToiletAid.Core.Person;

namespace ToiletAid.Core.Comparing;

/// <summary>What was known at one visit.</summary>
/// <param name="Number">Its number in the profile, from 1.</param>
/// <param name="Date">Its day.</param>
/// <param name="Answers">What was known.</param>
public sealed record Visit(int Number, DateOnly Date, Answers Answers);
