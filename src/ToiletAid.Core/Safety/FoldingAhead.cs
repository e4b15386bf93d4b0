using ToiletAid.Core.Person;

namespace ToiletAid.Core.Safety;

/// <summary>Whether the person can fold paper ahead of time, at a table and without haste.</summary>
internal static class FoldingAhead
{
    /// <summary>It takes fingers that take up paper, and can handle small things at all.</summary>
    internal static RuleOutcome HandCannot(Answers known)
    {
        var grasp = known.Choice("grasp") is { } g ? RuleOutcome.If(g is not ("fine-pinch" or "whole-hand")) : RuleOutcome.Unclear("grasp");
        var fingers = known.Choice("dexterity") is { } d ? RuleOutcome.If(d == "cannot")
            : known.Knows("dexterity") ? RuleOutcome.No
            : RuleOutcome.Unclear("dexterity");
        return grasp | fingers;
    }
}
