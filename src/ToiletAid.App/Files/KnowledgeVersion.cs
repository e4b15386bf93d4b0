using System.Reflection;
using System.Security.Cryptography;

namespace ToiletAid.App.Files;

/// <summary>Which program and which knowledge a document was made with.</summary>
public static class KnowledgeVersion
{
    private const int Shown = 12;

    /// <summary>Version of the program.</summary>
    public static string Program { get; } = typeof(KnowledgeVersion).Assembly.GetName().Version!.ToString(3);

    /// <summary>The first digits of a hash over all built-in data: it changes when any number or sentence does.</summary>
    public static string Knowledge { get; } = Hash(typeof(KnowledgeVersion).Assembly);

    private static string Hash(Assembly assembly)
    {
        using var all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string name in assembly.GetManifestResourceNames().Order(StringComparer.Ordinal))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            all.AppendData(System.Text.Encoding.UTF8.GetBytes(name));
            all.AppendData(SHA256.HashData(stream));
        }

        return Convert.ToHexStringLower(all.GetHashAndReset())[..Shown];
    }
}
