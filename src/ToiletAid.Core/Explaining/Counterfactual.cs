namespace ToiletAid.Core.Explaining;

/// <summary>A change within what is not certain that would put another plan first.</summary>
/// <param name="Change">The change.</param>
/// <param name="First">Id of the method that would be first.</param>
public sealed record Counterfactual(AnswerChange Change, string First);
