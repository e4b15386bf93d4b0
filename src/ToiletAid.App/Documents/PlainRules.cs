using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Documents;

/// <summary>Stops and cautions in plain words, from the hazard table.</summary>
/// <param name="Rules">The rules.</param>
public sealed record PlainRules(ImmutableArray<PlainRule> Rules)
{
    /// <summary>The built-in words.</summary>
    public static PlainRules Load() => Of(BuiltIn.Rules());

    /// <summary>The plain words of a hazard table.</summary>
    public static PlainRules Of(RuleBook rules) => new([.. rules.All.Where(r => r.Person is not null).Select(r => new PlainRule(r.Id, r.Person!, r.Helper))]);

    /// <summary>What is said of a finding.</summary>
    public static string Of(Finding finding, bool toHelper)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return SlotText.Fill((toHelper ? finding.Rule.Helper : null) ?? finding.Rule.Person ?? finding.Rule.Text, finding.Slots);
    }
}
