using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Safety;

/// <summary>A condition of the hazard table: a small closed language over answers and what a plan brings.</summary>
public abstract record Condition
{
    private Condition()
    {
    }

    /// <summary>Features of the plan that it looks at.</summary>
    internal abstract IEnumerable<PlanFeature> Features { get; }

    /// <summary>Questions whose answers it looks at.</summary>
    internal abstract IEnumerable<QuestionId> Questions { get; }

    /// <summary>Whether it holds; features need a plan in <paramref name="context"/>.</summary>
    internal abstract RuleOutcome Of(RuleContext context);

    /// <summary>It always holds.</summary>
    public sealed record Always : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => [];

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => [];

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context) => RuleOutcome.Yes;
    }

    /// <summary>All of them hold.</summary>
    /// <param name="Parts">The parts; a part that does not hold settles it, and the rest is not looked at.</param>
    public sealed record All(ImmutableArray<Condition> Parts) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => Parts.SelectMany(p => p.Features);

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => Parts.SelectMany(p => p.Questions);

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context)
        {
            var outcome = RuleOutcome.Yes;
            foreach (var part in Parts)
            {
                outcome &= part.Of(context);
                if (outcome.Applies == false)
                {
                    break;
                }
            }

            return outcome;
        }
    }

    /// <summary>One of them holds.</summary>
    /// <param name="Parts">The parts; a part that holds settles it, and the rest is not looked at.</param>
    public sealed record Any(ImmutableArray<Condition> Parts) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => Parts.SelectMany(p => p.Features);

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => Parts.SelectMany(p => p.Questions);

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context)
        {
            var outcome = RuleOutcome.No;
            foreach (var part in Parts)
            {
                outcome |= part.Of(context);
                if (outcome.Applies == true)
                {
                    break;
                }
            }

            return outcome;
        }
    }

    /// <summary>It does not hold.</summary>
    /// <param name="Part">The part.</param>
    public sealed record Not(Condition Part) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => Part.Features;

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => Part.Questions;

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context) => !Part.Of(context);
    }

    /// <summary>The answer is one of these, or holds one of these where many can be chosen.</summary>
    /// <param name="Question">Id of the question.</param>
    /// <param name="Options">Ids of options.</param>
    public sealed record Answered(QuestionId Question, ImmutableArray<string> Options) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => [];

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => [Question];

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context) =>
            context.Known.Choice(Question) is { } choice ? RuleOutcome.If(Options.Contains(choice))
            : context.Known.Many(Question) is { } many ? RuleOutcome.If(many.Any(Options.Contains))
            : RuleOutcome.Unclear(Question);
    }

    /// <summary>The answer is not known.</summary>
    /// <param name="Question">Id of the question.</param>
    public sealed record NotKnown(QuestionId Question) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => [];

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => [Question];

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context) => RuleOutcome.If(!context.Known.Knows(Question));
    }

    /// <summary>The answer is a number above a limit.</summary>
    /// <param name="Question">Id of the question.</param>
    /// <param name="Limit">The limit in the evidence.</param>
    public sealed record Above(QuestionId Question, EvidenceId Limit) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => [];

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => [Question];

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context) =>
            context.Known.Si(Question) is { } si ? RuleOutcome.If(si > context.Value(Limit)) : RuleOutcome.Unclear(Question);
    }

    /// <summary>The plan has a feature.</summary>
    /// <param name="Is">The feature.</param>
    public sealed record Brought(PlanFeature Is) : Condition
    {
        /// <inheritdoc/>
        internal override IEnumerable<PlanFeature> Features => [Is];

        /// <inheritdoc/>
        internal override IEnumerable<QuestionId> Questions => [];

        /// <inheritdoc/>
        internal override RuleOutcome Of(RuleContext context) => Is.Of(context);
    }
}
