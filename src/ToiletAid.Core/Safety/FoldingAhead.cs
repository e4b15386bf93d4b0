using ToiletAid.Core.Person;

namespace ToiletAid.Core.Safety;

/// <summary>Whether the person can fold paper ahead of time, at a table and without haste.</summary>
internal static class FoldingAhead
{
    /// <summary>It takes fingers that take up paper, and can handle small things at all.</summary>
    internal static RuleOutcome HandCannot(Answers known)
    {
        var grasp = known.Choice(QuestionIds.Grasp) is { } g ? RuleOutcome.If(g is not (Grasp.FinePinch or Grasp.WholeHand)) : RuleOutcome.Unclear(QuestionIds.Grasp);
        var fingers = known.Choice(QuestionIds.Dexterity) is { } d ? RuleOutcome.If(d == Dexterity.Cannot)
            : known.Knows(QuestionIds.Dexterity) ? RuleOutcome.No
            : RuleOutcome.Unclear(QuestionIds.Dexterity);
        return grasp | fingers;
    }
}
