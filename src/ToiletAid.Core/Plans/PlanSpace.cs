using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>All plans that can be made of a catalogue for one person.</summary>
internal sealed class PlanSpace
{
    private static readonly ImmutableArray<Posture> OnASeat = [Posture.Seated, Posture.SeatedLeaningForward];
    private static readonly ImmutableArray<Posture> InBed = [Posture.SideLying, Posture.Reclined];

    private readonly AidCatalogue _catalogue;
    private readonly Lazy<Dictionary<string, Aid>> _aids;
    private readonly Dictionary<string, ImmutableArray<AddOn>> _addOns;
    private readonly Dictionary<(string Aid, string? Companion, string Needed), ImmutableArray<ImmutableArray<AddOn>>> _sets = [];
    private readonly ImmutableArray<Posture> _postures;
    private readonly bool _hipLimit;
    private readonly bool _looksForHarm;
    private readonly bool _short;
    private readonly bool _mayMount;

    /// <summary>Makes ready.</summary>
    /// <param name="catalogue">Kinds of aid and add-ons.</param>
    /// <param name="evidence">Limits.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="addOns">Sets of add-ons of the same catalogue that were made before, by their ids; null for none.</param>
    internal PlanSpace(AidCatalogue catalogue, EvidenceTable evidence, Answers known, Dictionary<string, ImmutableArray<AddOn>>? addOns = null)
    {
        _addOns = addOns ?? new(StringComparer.Ordinal);
        _catalogue = catalogue;
        _aids = new(() => catalogue.Aids.ToDictionary(a => a.Id, StringComparer.Ordinal));
        _postures = Postures(known);
        _hipLimit = known.Has(OptionIds.PrecautionHipFlexionLimit);
        _looksForHarm = known.Is(OptionIds.FeelingReduced, OptionIds.FeelingNone) && !known.Is(OptionIds.SightNone);
        _short = known.Si(QuestionIds.Stature) < evidence.Value(EvidenceIds.BodyShort);
        _mayMount = !known.Is(OptionIds.FixturesNo) && (!known.Knows(QuestionIds.Place) || known.Is(OptionIds.PlaceOwnToilet));
    }

    /// <summary>Two people with the same key have the same plans.</summary>
    internal (string Postures, bool HipLimit, bool LooksForHarm, bool Short, bool MayMount) Key => (string.Join(' ', _postures), _hipLimit, _looksForHarm, _short, _mayMount);

    /// <summary>Every plan of a method.</summary>
    internal IEnumerable<Plan> Of(Aid aid) =>
        from posture in PosturesOf(aid)
        from companion in Companions(aid)
        from approach in Approaches(aid, companion)
        from addOns in AddOns(aid, companion, posture, approach)
        select new Plan { Aid = aid, AddOns = addOns, Companion = companion, Approach = approach, Posture = posture };

    /// <summary>Postures worth trying: the one used now, and the usual ones that it can be changed into without more balance than shown.</summary>
    internal static ImmutableArray<Posture> Postures(Answers known)
    {
        bool inBedNow = known.Is(OptionIds.PlaceBed);
        return known.Choice(QuestionIds.Posture) switch
        {
            null => inBedNow ? InBed : OnASeat,
            Posture.Reclined when inBedNow => [Posture.Reclined, Posture.SideLying],
            Posture.Reclined => [Posture.Reclined],
            Posture.SideLying => [Posture.SideLying],
            { } inBed when inBedNow => [inBed],
            Posture.HalfStanding => [Posture.HalfStanding, .. OnASeat],
            Posture.Standing => [Posture.Standing, .. OnASeat],
            _ => OnASeat,
        };
    }

    /// <summary>A seat aid needs nobody's reach, so any posture in which it works will do; one that nothing allows is kept, so that a rule can say so.</summary>
    private IEnumerable<Posture> PosturesOf(Aid aid)
    {
        var usable = _postures.Where(aid.Postures.Contains).ToList();
        return usable.Count > 0 ? usable : _postures.Take(1);
    }

    /// <summary>A moist wipe does not dry what a wash leaves wet, whatever a stock file says.</summary>
    private IEnumerable<Aid?> Companions(Aid aid) =>
        [null, .. aid.Companions.Select(id => _aids.Value.GetValueOrDefault(id)).Where(a => a is not null && !(aid.Water is not null && a is { NeedsBin: true, Method: MethodKind.Wipe }))];

    private static IEnumerable<Approach?> Approaches(Aid aid, Aid? companion)
    {
        var ways = aid.Approaches.IsEmpty ? companion?.Approaches ?? [] : aid.Approaches;
        return ways.IsEmpty ? [null] : ways.Select(w => (Approach?)w);
    }

    /// <summary>Sets of add-ons to try. The same sets are given again for another posture or approach that needs the same, so that what
    /// was worked out for one of them need not be worked out anew.</summary>
    private ImmutableArray<ImmutableArray<AddOn>> AddOns(Aid aid, Aid? companion, Posture posture, Approach? approach)
    {
        var possible = _catalogue.AddOns.Where(a => Serves(a, aid) || (companion is not null && Serves(a, companion))).ToList();
        var needed = possible.Where(a => IsNeeded(a, posture, approach)).ToList();
        var key = (aid.Id, companion?.Id, string.Join('+', needed.Select(a => a.Id)));
        if (!_sets.TryGetValue(key, out var sets))
        {
            IEnumerable<AddOn?> forHand = [null, .. possible.Where(a => a.HoldsTheHand || a.GripShare is not null)];
            List<AddOn?> forPaper = [null, .. possible.Where(a => a.PreparesPaper)];
            _sets[key] = sets =
            [
                .. from hand in forHand
                   from paper in forPaper
                   select Same([.. possible.Where(a => a == hand || a == paper || needed.Contains(a))]),
            ];
        }

        return sets;
    }

    /// <summary>The same object for the same add-ons, whatever they are used with.</summary>
    private ImmutableArray<AddOn> Same(ImmutableArray<AddOn> addOns)
    {
        string key = string.Join('+', addOns.Select(a => a.Id));
        return _addOns.TryGetValue(key, out var same) ? same : _addOns[key] = addOns;
    }

    /// <summary>Paper that is folded ahead helps what takes it as a pad: ends still have to be tucked in, and a strip still has to be wrapped.</summary>
    private static bool Serves(AddOn addOn, Aid aid) => aid.AddOns.Contains(addOn.Id) && (!addOn.PreparesPaper || aid.Paper is { Hold: PaperHold.Pad });

    /// <summary>What safety asks for is part of every plan that needs it; what only helps the hand is tried with and without.</summary>
    private bool IsNeeded(AddOn addOn, Posture posture, Approach? approach) =>
        (addOn.ShowsTheSkin && _looksForHarm)
        || (addOn.RoomGained is not null && _hipLimit && posture == Posture.Seated)
        || (addOn.Steadies && addOn.ChangesFixtures && _mayMount && (posture == Posture.HalfStanding || (approach == Approach.Side && OnASeat.Contains(posture))))
        || (addOn.Steadies && !addOn.ChangesFixtures && _short && !_hipLimit && posture == Posture.Seated);
}
