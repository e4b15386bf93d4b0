using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Teaching;

/// <summary>What each kind would mean for one person, a sentence each, from the same advice as every result.</summary>
/// <param name="words">Names of the kinds.</param>
/// <param name="advice">The advice.</param>
/// <param name="known">The answers that it rests on.</param>
internal sealed class ForThisPerson(TeachingWords words, Advice advice, Answers known)
{
    private readonly CauseText _causes = new(known);

    /// <summary>The sentence about a kind.</summary>
    internal string Of(Aid aid)
    {
        string name = words.Name(aid);
        if (advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == aid.Id || r.Plan.Aid.KindId == aid.Id) is { } ranked)
        {
            name += ranked.Plan.Variant is not { } variant ? string.Empty : ranked.Otherwise.IsEmpty ? $" {variant.Has}" : $" {variant.Has}, and only so,";
            string sure = $"for {SlotText.OfHundred(ranked.Rank == 1 ? advice.Held : ranked.FirstShare)} of 100 people like this";
            return ranked.Rank == 1
                ? $"{Spoken.Capital(name)} comes first for this person, {sure}."
                : $"{Spoken.Capital(name)} is in place {ranked.Rank} of {advice.Ranked.Length}, first {sure}{Before(ranked)}.";
        }

        return advice.RuledOut.FirstOrDefault(r => r.Aid.Id == aid.Id) is { } out_
            ? $"{Spoken.Capital(name)} is ruled out for this person: {PlanText.Lower(BriefText.FirstSentence(out_.Reasons[0]))}"
            : $"{Spoken.Capital(name)} was not looked at for this person.";
    }

    /// <summary>What puts the first kind before it: the widest difference for which a cause can be named.</summary>
    private string Before(RankedPlan ranked)
    {
        var first = advice.Ranked[0];
        string? cause = Enumerable.Range(0, advice.Weights.Length)
            .Select(i => (Criterion: (Criterion)i, By: advice.Weights[i] * (first.Criteria[i] - ranked.Criteria[i])))
            .Where(c => c.By > 0)
            .OrderByDescending(c => c.By)
            .Select(c => _causes.Of(c.Criterion, first, ranked))
            .FirstOrDefault(c => c is not null);
        return cause is null ? string.Empty : $"; {words.Name(first.Plan.Aid)} stands before it: {PlanText.Lower(cause)}";
    }
}
