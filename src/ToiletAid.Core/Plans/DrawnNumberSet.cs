using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Plans;

/// <summary>One draw of every number that has a range.</summary>
internal sealed class DrawnNumberSet : NumberSet
{
    /// <summary>Plans of which the drawn ones are kept; then it starts afresh, so that a long batch does not fill the memory.</summary>
    private const int MostKept = 4096;

    private readonly DrawnNumbers _numbers;
    private readonly int _set;
    private readonly Dictionary<Plan, Plan> _plans = new(SameObject<Plan>.Comparer);
    private readonly ConditionalWeakTable<Aid, Aid> _aids = [];
    private readonly ConditionalWeakTable<AddOn, AddOn> _addOns = [];
    private readonly ConditionalWeakTable<AddOn[], AddOn[]> _sets = [];

    private DrawnNumberSet(DrawnNumbers numbers, int set, KnowledgeBase knowledge, EvidenceTable evidence, HandModel hand)
        : base(evidence, hand, new(knowledge with { Evidence = evidence })) => (_numbers, _set) = (numbers, set);

    /// <summary>Draws.</summary>
    /// <param name="numbers">What draws.</param>
    /// <param name="set">Number of the set, from 0.</param>
    /// <param name="knowledge">What is known beforehand.</param>
    internal static DrawnNumberSet Of(DrawnNumbers numbers, int set, KnowledgeBase knowledge)
    {
        KeyValuePair<string, Sourced> Drawn(string id, Sourced number) => KeyValuePair.Create(id, numbers.Drawn(set, id, number));
        var hand = knowledge.Hand.Coefficients.Numbers;
        return new(
            numbers,
            set,
            knowledge,
            new(knowledge.Evidence.Ids.Select(id => Drawn(id.Text, knowledge.Evidence[id]))),
            knowledge.Hand with { Coefficients = new(new NumberTable(hand.Ids.Select(id => Drawn(id, hand[id])))) });
    }

    /// <summary>The same draw where aids or prices are others.</summary>
    /// <param name="knowledge">What is known beforehand, with the same evidence and the same hands.</param>
    internal DrawnNumberSet Under(KnowledgeBase knowledge) => new(_numbers, _set, knowledge, Evidence, Hand);

    /// <inheritdoc/>
    internal override Plan Of(Plan plan)
    {
        if (!_plans.TryGetValue(plan, out var drawn))
        {
            if (_plans.Count >= MostKept)
            {
                _plans.Clear();
            }

            _plans[plan] = drawn = plan with
            {
                Aid = Of(plan.Aid),
                AddOns = Of(plan.AddOns),
                Companion = plan.Companion is { } companion ? Of(companion) : null,
            };
        }

        return drawn;
    }

    private Aid Of(Aid aid) => _aids.GetValue(aid, Draw);

    private ImmutableArray<AddOn> Of(ImmutableArray<AddOn> addOns) => addOns.IsDefaultOrEmpty ? addOns
        : ImmutableCollectionsMarshal.AsImmutableArray(_sets.GetValue(ImmutableCollectionsMarshal.AsArray(addOns)!, set => [.. set.Select(Of)]));

    // Variants and articles of a kind share where in its range a number lies.
    private Aid Draw(Aid aid)
    {
        Sourced Number(string name, Sourced number) => _numbers.Drawn(_set, $"{aid.KindId}.{name}", number);
        Sourced? Perhaps(string name, Sourced? number) => number is null ? null : Number(name, number);
        return aid with
        {
            Length = Perhaps("length", aid.Length),
            JetReach = Perhaps("jet", aid.JetReach),
            TipWidth = Perhaps("tip", aid.TipWidth),
            Mass = Number("mass", aid.Mass),
            FoldedLength = Perhaps("folded", aid.FoldedLength),
            Operations = [.. aid.Operations.Select((o, i) => o with { Force = Number($"force.{i}", o.Force), Duration = Number($"time.{i}", o.Duration) })],
            Water = aid.Water is { } water ? water with { Reservoir = Perhaps("reservoir", water.Reservoir) } : null,
            Coverage = Number("coverage", aid.Coverage),
            Rubbing = Number("rubbing", aid.Rubbing),
            SoilTouched = Number("soil", aid.SoilTouched),
            EasyToClean = Number("easy", aid.EasyToClean),
            Noticeable = Number("noticeable", aid.Noticeable),
            Noise = Number("noise", aid.Noise),
            NeedsSight = Number("sight", aid.NeedsSight),
            Upkeep = Of(aid.KindId, aid.Upkeep),
        };
    }

    private AddOn Of(AddOn addOn) => _addOns.GetValue(addOn, Draw);

    private AddOn Draw(AddOn addOn) => addOn with { GripShare = addOn.GripShare is { } share ? _numbers.Drawn(_set, $"{addOn.Id}.grip", share) : null, Upkeep = Of(addOn.Id, addOn.Upkeep) };

    private Upkeep Of(string id, Upkeep upkeep) => upkeep with
    {
        Price = _numbers.Drawn(_set, $"{id}.price", upkeep.Price),
        LifeYears = _numbers.Drawn(_set, $"{id}.life", upkeep.LifeYears),
        MonthlyConsumables = _numbers.Drawn(_set, $"{id}.monthly", upkeep.MonthlyConsumables),
    };
}
