using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Interview;

namespace ToiletAid.Core.Asking;

/// <summary>What can be said before everything is asked: which kinds may come first among people who would give these answers, and what to ask next.</summary>
public sealed record Outlook
{
    /// <summary>Why nothing more is asked, or that something is.</summary>
    public required Enough Enough { get; init; }

    /// <summary>The questions that are still to be asked, the next one first; empty when it is enough.</summary>
    public required ImmutableArray<Question> Next { get; init; }

    /// <summary>Every open question with what it may bring, the most valuable first; empty while the opening questions are not answered.</summary>
    public required ImmutableArray<QuestionValue> Values { get; init; }

    /// <summary>The kind that is best on the whole; null when none can be offered or nothing was judged.</summary>
    public Aid? First { get; init; }

    /// <summary>Kinds that are as good as equal on these answers, the best first: one to three.</summary>
    public ImmutableArray<Aid> Tier { get => field.IsDefault ? [] : field; init; }

    /// <summary>Of the tier, what advice on the same answers offers: it draws more people, and knows hands and reach more exactly.</summary>
    /// <param name="advice">The advice.</param>
    public ImmutableArray<Aid> Offered(Advice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return [.. Tier.Where(a => advice.Ranked.Any(r => r.Plan.Aid.KindId == a.KindId && r.BeatenBy is null))];
    }

    /// <summary>How often the first kind is best once everything is asked, of people who would give these answers, 0 to 1; as calibrated.</summary>
    public double Share { get; init; }

    /// <summary>Share of these people and of their weightings for whom it comes first, 0 to 1; before it is calibrated.</summary>
    public double RawShare { get; init; }

    /// <summary>The question that would decide best between the kinds; null where none would.</summary>
    public Question? Deciding { get; init; }

    /// <summary>Share of people and weightings for which choosing after all answers, and not now, is expected to put the right kind first; a first place that a rule
    /// forbids counts a little more. 0 or more.</summary>
    public double LossLeft { get; init; }
}
