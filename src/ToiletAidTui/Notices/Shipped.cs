using System.Text.Json;

namespace ToiletAidTui.Notices;

/// <summary>What of others is in the program, as .ci/notices wrote it.</summary>
internal static class Shipped
{
    /// <summary>The libraries, in the order of their names.</summary>
    internal static Library[] Libraries()
    {
        using var stream = Open("libraries.json");
        return JsonSerializer.Deserialize(stream, LibraryJson.Default.LibraryArray)!;
    }

    /// <summary>Their licences in full.</summary>
    internal static string Notices()
    {
        using var reader = new StreamReader(Open("THIRD-PARTY-NOTICES.txt"));
        return reader.ReadToEnd();
    }

    private static Stream Open(string name) => typeof(Shipped).Assembly.GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"the program was built without {name}");
}
