#pragma warning disable CS1591 // the data say what each of them means
using ToiletAid.Core.Ids;

namespace ToiletAid.Core.Knowledge;

/// <summary>Rules that code names, held against the data when these are loaded (<c>NamedIds</c>).</summary>
public static class RuleIds
{
    private static readonly IdTable<RuleId> Named = new();

    public static readonly RuleId AirOnBrokenSkin = Id("air-on-broken-skin");
    public static readonly RuleId HandDoesNotReach = Id("hand-does-not-reach");
    public static readonly RuleId HandNotSure = Id("hand-not-sure");
    public static readonly RuleId HeatOfSeatAndAir = Id("heat-of-seat-and-air");
    public static readonly RuleId HelperFolds = Id("helper-folds");
    public static readonly RuleId HelperPreparesPaper = Id("helper-prepares-paper");
    public static readonly RuleId NeedsPrompting = Id("needs-prompting");
    public static readonly RuleId Scald = Id("scald");
    public static readonly RuleId SeenNotToReach = Id("seen-not-to-reach");
    public static readonly RuleId SignsNotKnown = Id("signs-not-known");
    public static readonly RuleId StrengthNearLimit = Id("strength-near-limit");
    public static readonly RuleId WarmWater = Id("warm-water");
    public static readonly RuleId WoundAdvice = Id("wound-advice");

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<RuleId> All => Named.All;

    private static RuleId Id(string id) => Named.Add(new(id));
}
