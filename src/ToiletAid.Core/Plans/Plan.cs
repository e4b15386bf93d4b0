using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>What is ranked: one cleaning method with everything around it.</summary>
public sealed record Plan
{
    /// <summary>The cleaning method.</summary>
    public required Aid Aid { get; init; }

    /// <summary>The variant of the kind that is meant; null for the kind as it usually is.</summary>
    public AidVariant? Variant => Aid.Variant;

    /// <summary>Add-ons, in the order of the catalogue.</summary>
    public required ImmutableArray<AddOn> AddOns { get; init; }

    /// <summary>What follows it: pats dry after a wash, or finishes with a moist wipe; null for nothing.</summary>
    public Aid? Companion { get; init; }

    /// <summary>Way to the skin; null where none is needed.</summary>
    public Approach? Approach { get; init; }

    /// <summary>Posture.</summary>
    public required Posture Posture { get; init; }

    /// <summary>Both methods of the plan, or the one.</summary>
    public PlanMethods Methods => new(Aid, Companion);

    /// <summary>The method that uses water, the cleaning method before the companion; null when none does.</summary>
    public Aid? Washing => Aid.Water is not null ? Aid : Companion?.Water is not null ? Companion : null;

    /// <summary>The method that touches the skin last.</summary>
    internal Aid Last => Companion ?? Aid;

    /// <summary>True when a method or an add-on changes what is fixed to the building.</summary>
    public bool ChangesFixtures => Methods.Any(m => m.ChangesFixtures) || AddOns.Any(a => a.ChangesFixtures);

    /// <summary>True when the plan has the add-on.</summary>
    /// <param name="addOn">Id of the add-on.</param>
    public bool Has(string addOn) => AddOns.Any(a => a.Id == addOn);

    /// <summary>True when a method or an add-on touches the skin with the material.</summary>
    /// <param name="material">A material as the catalogue names it, such as latex.</param>
    public bool Touches(string material) => Methods.Any(m => m.Materials.Contains(material)) || AddOns.Any(a => a.Materials.Contains(material));

    /// <summary>True when one handled tool follows another: two things to buy, to load and to wash.</summary>
    public bool TakesTwoTools => Aid.Reach is ReachKind.Handle or ReachKind.Jet && Companion is { Reach: ReachKind.Handle };

    /// <summary>Steps that must be remembered.</summary>
    public int Steps
    {
        get
        {
            int steps = Aid.Steps + (Companion?.Steps ?? 0);
            foreach (var addOn in AddOns)
            {
                steps += addOn.ExtraSteps;
            }

            return steps;
        }
    }

    /// <summary>The plan with a variant of its cleaning method.</summary>
    /// <param name="variant">One of its variants.</param>
    internal Plan As(AidVariant variant) => this with { Aid = Aid.As(variant) };

    /// <summary>A key that tells any two different plans apart, and sorts them the same everywhere.</summary>
    public string Key => string.Join('+', (string[])[Aid.Key, .. AddOns.Select(a => a.Id)]) + ">" + Companion?.Id + "@" + Posture + "/" + Approach;
}
