using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Two answers that cannot both be right within their errors; ask again, never average.</summary>
/// <param name="Question">Id of the quick question: reach-behind, reach-front or lean.</param>
/// <param name="Against">Id of what it disagrees with: joints or lean-degrees.</param>
/// <param name="Metres">By how much the landmark is missed or passed beyond the errors, m; above 0. For the lean question, 0.</param>
/// <param name="Radians">By how much angles disagree beyond the errors, rad; 0 where the disagreement is a length.</param>
/// <param name="AnswerIsTooGood">True when the quick answer claims more than the joints allow; false when it claims less.</param>
public sealed record ReachContradiction(QuestionId Question, string Against, double Metres, double Radians, bool AnswerIsTooGood);
