using ToiletAidTui.Keys;

namespace ToiletAidTui.Settings;

/// <summary>A setting as it stands.</summary>
/// <param name="Definition">The setting.</param>
/// <param name="Value">Its value.</param>
/// <param name="Source">Where the value came from, in words.</param>
internal sealed record SettingValue(SettingDefinition Definition, string Value, string Source)
{
    /// <summary>The setting as it is read in a list.</summary>
    internal string Entry => $"{Definition.Label}: {(Definition.Name.StartsWith(SettingList.Keys, StringComparison.Ordinal) ? string.Join(" or ", Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(KeyMap.Words)) : Value)}";

    /// <summary>The setting as a sentence or two.</summary>
    internal string Sentence => $"{Definition.Name}: {Value}, {Source}. {Definition.Meaning}";
}
