using ToiletAid.Core.Interview;

namespace ToiletAid.Core.Asking;

/// <summary>What asking a question may bring.</summary>
/// <param name="Question">The question.</param>
/// <param name="Gain">How much its answer is expected to add to the choice, 0 or more, on the scale of shares of first places.</param>
/// <param name="ChangeShare">Share of people who would give the answers so far whose answer to it puts another kind first, 0 to 1.</param>
/// <param name="Decides">How much it tells apart people for whom different kinds are best, on the same scale; that helps the questions after it.</param>
/// <param name="MustBeAsked">True where a rule about the plan that is first cannot tell without it.</param>
public sealed record QuestionValue(Question Question, double Gain, double ChangeShare, double Decides, bool MustBeAsked);
