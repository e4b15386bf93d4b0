using Humanizer;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Wording;

/// <summary>Plans and criteria in words.</summary>
public static class PlanText
{
    /// <summary>The plan in one sentence without a full stop: method, way, posture, add-ons, companion.</summary>
    public static string Name(Plan plan)
    {
        string way = plan.Approach is { } approach ? ", " + Way(approach) : string.Empty;
        string with = plan.AddOns.IsEmpty ? string.Empty : ", with " + plan.AddOns.Select(a => Lower(a.Name)).Humanize("and");
        string then = plan.Companion is { } c ? $", then {Then(plan)} {Lower(c.Name)}" : string.Empty;
        return $"{plan.Aid.Name}{way}, {Of(plan.Posture)}{with}{then}";
    }

    /// <summary>The method alone.</summary>
    public static string Method(Plan plan) => Lower(plan.Aid.Name);

    /// <summary>The method as a sentence names it: with its article where it is one thing, and the bare hand by what it does.</summary>
    public static string The(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return The(plan.Aid);
    }

    /// <summary>The same of a kind of aid.</summary>
    public static string The(Aid aid)
    {
        ArgumentNullException.ThrowIfNull(aid);
        const string Own = "Own hand with ";
        return aid.Method == MethodKind.Helper ? Lower(aid.Name)
            : aid.Name.StartsWith(Own, StringComparison.Ordinal) ? $"wiping by hand with {aid.Name[Own.Length..]}"
            : aid.Name.Split(" with ")[0].EndsWith('s') || aid.Name.StartsWith("The ", StringComparison.OrdinalIgnoreCase) ? Lower(aid.Name)
            : $"the {Lower(aid.Name)}";
    }

    /// <summary>The way to the skin.</summary>
    public static string Way(Approach approach) => approach switch
    {
        Approach.Behind => "from behind",
        Approach.Front => "from the front",
        _ => "from the side",
    };

    /// <summary>The posture, as the middle of a sentence.</summary>
    public static string Of(Posture posture) => posture switch
    {
        Posture.Seated => "seated",
        Posture.SeatedLeaningForward => "seated leaning forward",
        Posture.HalfStanding => "half-standing",
        Posture.Standing => "standing",
        Posture.SideLying => "lying on the side",
        _ => "reclined",
    };

    /// <summary>The criterion's name.</summary>
    public static string Of(Criterion criterion) => criterion.ToString();

    /// <summary>What a value of 100 of 100 means.</summary>
    public static string Best(Criterion criterion) => criterion switch
    {
        Criterion.Reach => "it is certainly long enough",
        Criterion.Handling => "every step is easy for the hand",
        Criterion.Cleaning => "the skin gets clean and dry",
        Criterion.Skin => "no risk to the skin",
        Criterion.Contact => "soil is never touched",
        Criterion.Learning => "nothing to remember",
        Criterion.Carrying => "it is easy to carry and goes unnoticed",
        Criterion.Independence => "nobody else is needed",
        _ => "no running costs",
    };

    internal static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string Then(Plan plan) => plan.Aid.Water is not null ? "pat dry with" : "finish with";
}
