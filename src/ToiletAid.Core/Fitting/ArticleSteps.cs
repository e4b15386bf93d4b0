using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Fitting;

/// <summary>Numbers of articles in steps that a ruler or a scale tells apart, and how far it is looked for another one.</summary>
/// <param name="evidence">Steps and limits.</param>
internal sealed class ArticleSteps(EvidenceTable evidence)
{
    /// <summary>Part of a step that rounding may cost.</summary>
    private const double Slack = 1e-6;

    private readonly double _beyond = evidence.Value(EvidenceIds.FittingBeyondRange);

    /// <summary>Width of a kind's own range, SI, at least a step.</summary>
    internal double Width(ArticleTrait trait, Sourced range) => Math.Max(range.High - range.Low, Step(trait));

    /// <summary>From where to where articles are looked at: beyond the kind's own range on either side, and no nearer to nothing than a step.</summary>
    internal (double Low, double High) Searched(ArticleTrait trait, Sourced range)
    {
        double beyond = _beyond * Width(trait, range);
        return (Math.Max(Step(trait), range.Low - beyond), range.High + beyond);
    }

    /// <summary>The last step from a number towards an end at which something still holds, and the next, at which it does not; null when it holds up to the end.</summary>
    internal (double Good, double Bad)? Bound(ArticleTrait trait, double from, double end, Func<double, bool> holds)
    {
        double step = Step(trait);
        int sign = end < from ? -1 : 1;
        int first = sign < 0 ? (int)Math.Ceiling((from / step) - Slack) - 1 : (int)Math.Floor((from / step) + Slack) + 1;
        int last = Last(trait, end, sign);
        int count = ((last - first) * sign) + 1;
        if (count <= 0 || holds(At(first + ((count - 1) * sign))))
        {
            return null;
        }

        // Below good it holds, at bad it does not.
        int good = -1, bad = count - 1;
        while (bad - good > 1)
        {
            int middle = (good + bad) / 2;
            (good, bad) = holds(At(first + (middle * sign))) ? (middle, bad) : (good, middle);
        }

        return (good < 0 ? from : At(first + (good * sign)), At(first + (bad * sign)));

        double At(int steps) => steps * step;
    }

    /// <summary>The last step before an end, seen from a number.</summary>
    internal double OnGrid(ArticleTrait trait, double end, double from) => Last(trait, end, end < from ? -1 : 1) * Step(trait);

    private int Last(ArticleTrait trait, double end, int sign) =>
        sign < 0 ? (int)Math.Ceiling((end / Step(trait)) - Slack) : (int)Math.Floor((end / Step(trait)) + Slack);

    private double Step(ArticleTrait trait) => trait.Kind switch
    {
        ArticleTraitKind.Length or ArticleTraitKind.JetReach or ArticleTraitKind.FoldedLength => evidence.Value(EvidenceIds.FittingStepLength),
        ArticleTraitKind.TipWidth => evidence.Value(EvidenceIds.FittingStepWidth),
        ArticleTraitKind.Mass => evidence.Value(EvidenceIds.FittingStepMass),
        ArticleTraitKind.Reservoir => evidence.Value(EvidenceIds.FittingStepReservoir),
        ArticleTraitKind.Price => evidence.Value(EvidenceIds.FittingStepPrice),
        _ => evidence.Value(EvidenceIds.FittingStepForce),
    };
}
