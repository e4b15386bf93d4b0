namespace ToiletAidTui.Settings;

/// <summary>A setting that there is.</summary>
/// <param name="Name">Name in files, kebab-case; a colon goes into a group.</param>
/// <param name="BuiltIn">The value that it has unless somebody sets another.</param>
/// <param name="Meaning">What it does, one sentence.</param>
/// <param name="Wanted">What values it takes, the end of a sentence.</param>
/// <param name="Takes">True for a value that it takes.</param>
internal sealed record SettingDefinition(string Name, string BuiltIn, string Meaning, string Wanted, Func<string, bool> Takes)
{
    /// <summary>What it is called on a screen.</summary>
    internal required string Label { get; init; }

    /// <summary>Its name in the environment.</summary>
    internal string Variable => "TOILETAID_" + Name.Replace('-', '_').Replace(':', '_').ToUpperInvariant();
}
