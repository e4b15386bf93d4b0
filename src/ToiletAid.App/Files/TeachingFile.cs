using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Teaching;

namespace ToiletAid.App.Files;

/// <summary>Who may choose which kind, counted ahead over simulated people, as in the file.</summary>
/// <param name="Format">How the file is to be read.</param>
/// <param name="Basis">What kind of knowledge it is.</param>
/// <param name="Source">The command that counts it again.</param>
/// <param name="Data">Fingerprint of the data that it was counted with.</param>
/// <param name="People">How many people were counted.</param>
/// <param name="Kinds">The counts by kind.</param>
public sealed record TeachingFile(int Format, Basis Basis, string Source, string Data, int People, ImmutableArray<KindTeaching> Kinds)
{
    /// <summary>The built-in counts.</summary>
    public static TeachingFile Load() => BuiltIn.Load("teaching.json", KnowledgeJson.Default.TeachingFile);
}
