using System.Text;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Changes files a little: bytes, pieces, and words that readers stumble over.</summary>
internal sealed class Mutator(Random random, byte[][] seeds)
{
    private const int MostChanges = 4;
    private const int LongestPiece = 200;

    private static readonly byte[][] Words =
    [
        .. ((string[])[
            "null", "true", "-0", "1e999", "1e-400", "99999999999999999999", "0.1", "-1", "1.5", "2147483648", "\"\"", "[]", "{}", "[[", "]]", "{\"a\":", "\\u0000", "\\ud800", "\\u001b[2J", "\\u202e",
            "\u00e9", "\u0660", "\U0001F6BD", "\"format\":1,", "\"format\": 2", "\"revision\":0,", "\"hash\":\"sha256:00\",", "\"value\":", "\"unit\":\"ft\",", "\"unit\": \"lb\"", "\"how\":\"measured\",",
            "\"not-known\"", "\"none\"", "\"person\":\"Anna\",", "\"K-0\"", "2026-02-30", "9999-12-31", "0001-01-01", "\"protected\":\"e30\",", "\"header\":{},", "\"unprotected\":{\"p2c\":5},",
            "\"recipients\":[],", "\"aad\":\"\",", "eyJ", ".", ",", ":", "\"", "//", "/*", "NaN", "Infinity", "\r\n", "\t", " "]).Select(Encoding.UTF8.GetBytes),
        [0], [0xFF], [0xC0, 0x80], [0xED, 0xA0, 0x80], [0xEF, 0xBB, 0xBF], [0xFE, 0xFF], new byte[1000],
    ];

    internal byte[] Next()
    {
        var bytes = new List<byte>(seeds[random.Next(seeds.Length)]);

        // Two of three keep their form, or nearly all mutants would end at the JSON reader and few would reach the meaning.
        bool keepsForm = random.Next(3) > 0;
        for (int i = random.Next(MostChanges) + 1; i > 0; i--)
        {
            if (keepsForm)
            {
                ReplaceToken(bytes, random.Next(bytes.Count + 1));
            }
            else
            {
                Change(bytes);
            }
        }

        return [.. bytes];
    }

    private void Change(List<byte> bytes)
    {
        int at = random.Next(bytes.Count + 1), length = Math.Min(random.Next(1, LongestPiece), bytes.Count - at);
        switch (random.Next(9))
        {
            case 0 when at < bytes.Count:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1 when at < bytes.Count:
                bytes[at] = (byte)random.Next(256);
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            case 4:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
            case 5:
                bytes.InsertRange(at, Words[random.Next(Words.Length)]);
                break;
            case 6:
                byte[] other = seeds[random.Next(seeds.Length)];
                int from = random.Next(other.Length);
                bytes.InsertRange(at, other[from..Math.Min(other.Length, from + random.Next(LongestPiece))]);
                break;
            default:
                ReplaceToken(bytes, at);
                break;
        }
    }

    /// <summary>A whole number or word for another.</summary>
    private void ReplaceToken(List<byte> bytes, int at)
    {
        var (start, end) = TokenFrom(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(bytes), at);
        bool isNumber = start < end && char.IsAsciiDigit((char)bytes[start]);
        byte[] token = isNumber && random.Next(2) == 0 ? Encoding.ASCII.GetBytes(random.Next(-5, 400).ToString(System.Globalization.CultureInfo.InvariantCulture)) : Token(isNumber);
        bytes.RemoveRange(start, end - start);
        bytes.InsertRange(start, token);
    }

    /// <summary>A number or a word of some file.</summary>
    private byte[] Token(bool number)
    {
        while (true)
        {
            byte[] seed = seeds[random.Next(seeds.Length)];
            var (start, end) = TokenFrom(seed, random.Next(seed.Length));
            if (start < end && char.IsAsciiDigit((char)seed[start]) == number)
            {
                return seed[start..end];
            }
        }
    }

    private static (int Start, int End) TokenFrom(ReadOnlySpan<byte> bytes, int at)
    {
        while (at > 0 && at < bytes.Length && IsTokenPart(bytes[at - 1]))
        {
            at--;
        }

        while (at < bytes.Length && !IsTokenPart(bytes[at]))
        {
            at++;
        }

        int end = at;
        while (end < bytes.Length && IsTokenPart(bytes[end]))
        {
            end++;
        }

        return (at, end);
    }

    private static bool IsTokenPart(byte b) => b is (byte)'-' or (byte)'.' || char.IsAsciiLetterOrDigit((char)b);
}
