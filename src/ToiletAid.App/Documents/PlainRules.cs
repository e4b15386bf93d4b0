using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;

namespace ToiletAid.App.Documents;

/// <summary>Stops and cautions in plain words, as in the file.</summary>
/// <param name="Rules">The rules.</param>
public sealed record PlainRules(ImmutableArray<PlainRule> Rules)
{
    /// <summary>The built-in words.</summary>
    public static PlainRules Load() => BuiltIn.Load("plain.json", DocumentsJson.Default.PlainRules);

    /// <summary>What is said of a finding.</summary>
    public string Of(Finding finding, bool toHelper)
    {
        var plain = Rules.First(r => r.Id == finding.Rule.Id);
        return SlotText.Fill((toHelper ? plain.Helper : null) ?? plain.Person, finding.Slots);
    }
}
