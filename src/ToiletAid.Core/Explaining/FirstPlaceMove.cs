using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Explaining;

/// <summary>What a change does to the first place of one person, and why.</summary>
/// <param name="Before">First plan before; null when there was none.</param>
/// <param name="After">First plan after; null when there is none.</param>
/// <param name="Stopped">True when a red flag stops the person before and after.</param>
/// <param name="RuledOut">What now rules out the kind that was first; null when it is still offered.</param>
/// <param name="IsNew">True when the kind that is now first was not offered before.</param>
/// <param name="CarriedBy">Criterion that gives most to the lead of the new first over the old one; null when there is no such lead.</param>
public sealed record FirstPlaceMove(RankedPlan? Before, RankedPlan? After, bool Stopped, Rule? RuledOut, bool IsNew, Criterion? CarriedBy)
{
    /// <summary>True when another kind of aid is first.</summary>
    public bool IsChanged => Before?.Plan.Aid.KindId != After?.Plan.Aid.KindId;

    /// <summary>Compares advice on the same person before and after.</summary>
    public static FirstPlaceMove Of(Advice before, Advice after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var was = before.Ranked.FirstOrDefault();
        var now = after.Ranked.FirstOrDefault();
        var move = new FirstPlaceMove(was, now, !after.Stops.IsEmpty, null, false, null);
        if (!move.IsChanged)
        {
            return move;
        }

        var still = was is null ? null : after.Ranked.FirstOrDefault(p => p.Plan.Aid.KindId == was.Plan.Aid.KindId);
        return move with
        {
            RuledOut = was is null || still is not null ? null : after.RuledOut.FirstOrDefault(r => r.Aid.KindId == was.Plan.Aid.KindId)?.Reasons[0].Rule,
            IsNew = now is not null && before.Ranked.All(p => p.Plan.Aid.KindId != now.Plan.Aid.KindId),
            CarriedBy = now is null || still is null ? null : Carrier(after, now, still),
        };
    }

    private static Criterion Carrier(Advice advice, RankedPlan one, RankedPlan other) => Enum.GetValues<Criterion>()
        .MaxBy(c => advice.Weights[(int)c] * (one.Criteria[(int)c] - other.Criteria[(int)c]));
}
