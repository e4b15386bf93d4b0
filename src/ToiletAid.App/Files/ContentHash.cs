using System.Buffers;
using System.Security.Cryptography;
using System.Text;

namespace ToiletAid.App.Files;

/// <summary>
/// The hash of a profile: SHA-256 of the file without the line that holds it, so that it can be checked
/// with <c>grep -v '^  "hash": ' FILE | sha256sum</c>.
/// </summary>
internal static class ContentHash
{
    private const string Prefix = "sha256:";

    private static readonly SearchValues<char> HexDigits = SearchValues.Create("0123456789abcdef");
    private static readonly byte[] LineStart = "\n  \"hash\": \""u8.ToArray();

    /// <summary>True for text that can be such a hash.</summary>
    internal static bool IsOne(string text) =>
        text.Length == Prefix.Length + 64 && text.StartsWith(Prefix, StringComparison.Ordinal) && text.AsSpan(Prefix.Length).IndexOfAnyExcept(HexDigits) < 0;

    /// <summary>The file with the line put in after its second line.</summary>
    /// <param name="text">A profile with one member a line.</param>
    internal static byte[] Seal(ReadOnlySpan<byte> text)
    {
        int afterBrace = text.IndexOf((byte)'\n') + 1;
        int afterFormat = afterBrace + text[afterBrace..].IndexOf((byte)'\n') + 1;
        byte[] line = Encoding.ASCII.GetBytes($"  \"hash\": \"{Of(text)}\",\n");
        return [.. text[..afterFormat], .. line, .. text[afterFormat..]];
    }

    /// <summary>What <paramref name="hash"/> says about the file in which it was found.</summary>
    internal static Seal Check(ReadOnlySpan<byte> file, string hash)
    {
        // Text in JSON has no raw line ends, so these bytes can only be the member itself.
        int start = file.IndexOf(LineStart);
        if (start < 0)
        {
            return Files.Seal.Changed;
        }

        int length = file[(start + 1)..].IndexOf((byte)'\n');
        byte[] without = [.. file[..(start + 1)], .. file[(start + 1 + length + 1)..]];
        return Of(without) == hash ? Files.Seal.Whole : Files.Seal.Changed;
    }

    private static string Of(ReadOnlySpan<byte> text) => Prefix + Convert.ToHexStringLower(SHA256.HashData(text));
}
