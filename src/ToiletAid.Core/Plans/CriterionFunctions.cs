using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Plans;

/// <summary>Values of a plan on the criteria that do not depend on reach and hand. All shares and coefficients are evidence entries.</summary>
/// <param name="knowledge">Limits, coefficients, paper and prices.</param>
internal sealed class CriterionFunctions(KnowledgeBase knowledge)
{
    /// <summary>Frequencies of which costs are kept; then it starts afresh, so that a long batch does not fill the memory.</summary>
    private const int MostCosts = 256;

    private readonly Dictionary<(int Stool, double Cleans), Dictionary<Aid, double>> _costs = [];
    private (int Stool, double Cleans, Dictionary<Aid, double> Costs)? _lastCosts;
    private readonly double _wetLeft = knowledge.Evidence.Value(EvidenceIds.CleaningWetLeft);
    private readonly double _narrow = knowledge.Evidence.Value(EvidenceIds.CleaningNarrow);
    private readonly double _wide = knowledge.Evidence.Value(EvidenceIds.CleaningWide);
    private readonly double _wideShare = knowledge.Evidence.Value(EvidenceIds.CleaningWideShare);
    private readonly double _shallowShare = knowledge.Evidence.Value(EvidenceIds.CleaningShallowShare);
    private readonly double _menstrualDry = knowledge.Evidence.Value(EvidenceIds.CleaningMenstrualDry);
    private readonly double _unwanted = knowledge.Evidence.Value(EvidenceIds.CleaningUnwanted);
    private readonly double _companionShare = knowledge.Evidence.Value(EvidenceIds.CleaningCompanionShare);
    private readonly double _afterWash = knowledge.Evidence.Value(EvidenceIds.ContactAfterWash);
    private readonly double _hardTip = knowledge.Evidence.Value(EvidenceIds.SkinHardTip);
    private readonly double _scald = knowledge.Evidence.Value(EvidenceIds.SkinScald);
    private readonly double _wetSkin = knowledge.Evidence.Value(EvidenceIds.SkinWet);
    private readonly double _tremor = knowledge.Evidence.Value(EvidenceIds.SkinTremor);
    private readonly double _pat = knowledge.Evidence.Value(EvidenceIds.SkinPatShare);
    private readonly double _eachStep = knowledge.Evidence.Value(EvidenceIds.LearningEachStep);
    private readonly double _new = knowledge.Evidence.Value(EvidenceIds.LearningNew);
    private readonly double _prompted = knowledge.Evidence.Value(EvidenceIds.LearningPrompted);
    private readonly double _pocket = knowledge.Evidence.Value(EvidenceIds.CarryingPocket);
    private readonly double _bulky = knowledge.Evidence.Value(EvidenceIds.CarryingBulky);
    private readonly double _heavy = knowledge.Evidence.Value(EvidenceIds.CarryingHeavy);
    private readonly double _lengthShare = knowledge.Evidence.Value(EvidenceIds.CarryingLengthShare);
    private readonly double _massShare = knowledge.Evidence.Value(EvidenceIds.CarryingMassShare);
    private readonly double _half = knowledge.Evidence.Value(EvidenceIds.UpkeepHalf);
    private readonly double _fixtures = knowledge.Evidence.Value(EvidenceIds.UpkeepFixtures);
    private readonly double _socket = knowledge.Evidence.Value(EvidenceIds.UpkeepSocket);
    private readonly double _waterFar = knowledge.Evidence.Value(EvidenceIds.UpkeepWaterFar);
    private readonly double _drain = knowledge.Evidence.Value(EvidenceIds.UpkeepDrain);
    private readonly double _overBudget = knowledge.Evidence.Value(EvidenceIds.UpkeepOverBudget);
    private readonly double _byHelper = knowledge.Evidence.Value(EvidenceIds.IndependenceByHelper);
    private readonly double _madeReady = knowledge.Evidence.Value(EvidenceIds.IndependenceMadeReady);
    private readonly double _foldingSteps = knowledge.Evidence.Value(EvidenceIds.LearningPrepareSteps);
    private readonly double _withPrompts = knowledge.Evidence.Value(EvidenceIds.IndependencePrompted);

    /// <summary>Value of a plan on a criterion that hangs neither on reach nor on the hand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The criterion depends on one of them.</exception>
    internal double Of(Criterion criterion, Plan plan, PersonView person) => criterion switch
    {
        Criterion.Cleaning => Cleaning(plan, person),
        Criterion.Skin => Skin(plan, person),
        Criterion.Contact => Contact(plan, person),
        Criterion.Learning => Learning(plan, person),
        Criterion.Carrying => Carrying(plan, person),
        Criterion.Upkeep => Upkeep(plan, person),
        Criterion.Independence => Independence(plan, person),
        _ => throw new ArgumentOutOfRangeException(nameof(criterion), criterion, "depends on reach or hand"),
    };

    /// <summary>How clean and dry the skin gets. A companion takes up a share of what the first method leaves.</summary>
    internal double Cleaning(Plan plan, PersonView person)
    {
        double value = Alone(plan.Aid, person);
        if (plan.Companion is { } companion)
        {
            value = 1 - ((1 - value) * (1 - (_companionShare * Alone(companion, person))));
        }

        if (plan.Last.Method == MethodKind.Wash)
        {
            value *= _wetLeft;
        }

        bool wets = plan.Methods.Any(m => m.Water is not null);
        bool wanted = person.WantedMethod switch { "dry" => !wets, "wet" => wets || plan.Methods.Any(m => m.NeedsBin && m.Method == MethodKind.Wipe), _ => true };
        return wanted ? value : value * _unwanted;
    }

    /// <summary>How safe the skin is.</summary>
    internal double Skin(Plan plan, PersonView person)
    {
        double rubbing = plan.Aid.Rubbing.Value;
        if (plan.Companion is { } companion)
        {
            rubbing += companion.Rubbing.Value * _pat;
        }

        double risk = rubbing * person.Fragility;
        if (plan.Methods.Any(m => m.Tip == Tip.Hard))
        {
            // A mirror finds a tear but does not prevent it, so it takes nothing off here.
            risk += (_hardTip * person.LackOfWarning) + (person.MarkedTremor ? _tremor : 0);
        }

        if (plan.Methods.Any(m => m.Water is { CanBeWarm: true, LimitsTemperature: false }))
        {
            risk += _scald * person.LackOfWarning;
        }

        if (plan.Last.Method == MethodKind.Wash)
        {
            risk += _wetSkin * person.Fragility;
        }

        return Math.Clamp(1 - risk, 0, 1);
    }

    /// <summary>How little soil is touched and how easily everything is disinfected.</summary>
    /// <remarks>What follows a wash touches skin that is clean already.</remarks>
    internal double Contact(Plan plan, PersonView person)
    {
        double follows = plan.Aid.Method is MethodKind.Wash or MethodKind.WashAndDry ? _afterWash : 1;
        double touched = Math.Max(plan.Aid.SoilTouched.Value, (plan.Companion?.SoilTouched.Value ?? 0) * follows), easy = plan.Methods.Min(m => m.EasyToClean.Value);
        return Math.Clamp(1 - (touched * person.TouchCounts) - ((1 - easy) * person.CleaningCounts), 0, 1);
    }

    /// <summary>How easily it is remembered and done with the sight there is.</summary>
    internal double Learning(Plan plan, PersonView person)
    {
        int steps = plan.Steps;
        if (steps == 0)
        {
            return 1;
        }

        double followed = Math.Min(1, person.FollowsSteps / steps);
        double remembered = followed + ((1 - followed) * (person.SomebodyPrompts ? _prompted : 0));
        double sight = 1 - (person.SightCounts * plan.Methods.Max(m => m.NeedsSight.Value));
        bool habit = plan is { Aid: { Reach: ReachKind.BareHand, Paper: not null }, Companion: null };
        return Math.Clamp((remembered - (_eachStep * steps) - (habit ? 0 : _new)) * sight, 0, 1);
    }

    /// <summary>How little of a burden it is away from home, and how little it is seen and heard.</summary>
    internal double Carrying(Plan plan, PersonView person)
    {
        double burden = Math.Min(1, plan.Methods.Sum(Burden));
        double noticed = plan.Methods.Max(m => m.Noticeable.Value), heard = plan.Methods.Max(m => m.Noise.Value);
        return Math.Clamp(1 - (burden * person.CarryingCounts) - (noticed * person.NoticedCounts) - (heard * person.HeardCounts), 0, 1);
    }

    /// <summary>How little it costs in money, water, power and fixtures.</summary>
    internal double Upkeep(Plan plan, PersonView person)
    {
        double addOnsMonthly = 0, addOns = 0;
        foreach (var addOn in plan.AddOns)
        {
            addOnsMonthly += (addOn.Upkeep.Price.Value / (addOn.Upkeep.LifeYears.Value * Calendar.MonthsInYear)) + addOn.Upkeep.MonthlyConsumables.Value;
            addOns += addOn.Upkeep.Price.Value;
        }

        double monthly = plan.Methods.Sum(m => Monthly(m, person)) + addOnsMonthly;
        double price = plan.Methods.Sum(m => m.Upkeep.Price.Value) + addOns;
        double value = 1 / (1 + (monthly / _half));
        value -= plan.ChangesFixtures ? _fixtures : 0;
        value -= plan.Methods.Any(m => m.Water is { NeedsSocket: true }) ? _socket : 0;
        value -= !person.WaterInReach && plan.Methods.Any(m => m.Water is { Plumbed: false }) ? _waterFar : 0;
        value -= person.SensitiveDrain && plan.Methods.Any(m => m.NeedsBin && m.Method == MethodKind.Wipe) ? _drain : 0;
        return Math.Clamp(value, 0, 1) * (person.Budget < price ? _overBudget : 1);
    }

    /// <summary>How far the person does it alone: what another person has to do counts, and where several things the greatest.</summary>
    internal double Independence(Plan plan, PersonView person) =>
        plan.Methods.Any(m => m.Method == MethodKind.Helper) ? _byHelper
        : plan.Steps > person.FollowsSteps ? _withPrompts
        : plan.AddOns.Any(a => a.PreparesPaper) && (!person.FoldsPaper || person.FollowsSteps < _foldingSteps) ? _madeReady
        : 1;

    /// <summary>Cost of a method a month, in the clinic's currency.</summary>
    private double Monthly(Aid aid, PersonView person)
    {
        var costs = CostsOf(person.StoolType, person.CleansPerDay);
        if (!costs.TryGetValue(aid, out double cost))
        {
            costs[aid] = cost = PlanSetup.Cost(knowledge, aid, [], person.StoolType, person.CleansPerDay).Total;
        }

        return cost;
    }

    private Dictionary<Aid, double> CostsOf(int stool, double cleans)
    {
        if (_lastCosts is { } last && last.Stool == stool && last.Cleans.Equals(cleans))
        {
            return last.Costs;
        }

        if (!_costs.TryGetValue((stool, cleans), out var costs))
        {
            if (_costs.Count >= MostCosts)
            {
                _costs.Clear();
            }

            _costs[(stool, cleans)] = costs = new(SameObject<Aid>.Comparer);
        }

        _lastCosts = (stool, cleans, costs);
        return costs;
    }

    private double Alone(Aid aid, PersonView person)
    {
        double suits = aid.Method is MethodKind.Wash or MethodKind.WashAndDry ? person.WashCleaning
            : aid.NeedsBin && aid.Method == MethodKind.Wipe ? person.MoistCleaning
            : person.DryCleaning * (person.MenstrualBlood ? _menstrualDry : 1);
        return aid.Coverage.Value * suits * Cleft(aid, person);
    }

    /// <summary>What is left because a wide head stays outside the cleft; water has no width.</summary>
    private double Cleft(Aid aid, PersonView person)
    {
        if (aid.TipWidth is not { } width || aid.Method == MethodKind.Helper)
        {
            return 1;
        }

        double outside = Math.Clamp((width.Value - _narrow) / (_wide - _narrow), 0, 1);
        return 1 - (outside * (1 - (person.SoilStaysDeep ? _wideShare : _shallowShare)));
    }

    private double Burden(Aid aid)
    {
        if (aid.Reach == ReachKind.None)
        {
            // A seat cannot be taken along, and a helper is not always there.
            return 1;
        }

        if (aid.FoldedLength is not { } length)
        {
            return aid.ChangesFixtures ? 1 : 0;
        }

        double share = Math.Clamp((length.Value - _pocket) / (_bulky - _pocket), 0, 1) * _lengthShare;
        return Math.Min(1, share + (Math.Clamp(aid.FullKilograms / _heavy, 0, 1) * _massShare));
    }
}
