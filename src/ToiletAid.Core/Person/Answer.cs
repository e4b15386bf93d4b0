namespace ToiletAid.Core.Person;

/// <summary>An answer and how it was obtained.</summary>
/// <param name="Value">What was answered.</param>
/// <param name="How">How it was obtained; null where it is not said.</param>
public sealed record Answer(AnswerValue Value, HowObtained? How);
