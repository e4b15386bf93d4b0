using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Jose;
using ToiletAid.App.Files;

namespace ToiletAid.App.Protection;

/// <summary>Opens JWE files, ours and those of other tools, and tells apart what can be wrong with them.</summary>
internal static class ProtectedFile
{
    /// <summary>Member with the checksum of the compact form. It has no key: it tells accidents, the tag tells attacks.</summary>
    internal const string Checksum = "sha256";

    /// <summary>The members of the flattened form (RFC 7516, 7.2.2), in the order of the compact form.</summary>
    internal static readonly string[] Parts = ["protected", "encrypted_key", "iv", "ciphertext", "tag"];

    // Bounds for files of other tools: RFC 7518, 4.8.1.2 asks for 1000 or more; the upper one keeps a hostile file from taking minutes.
    private const int FewestIterations = 1000;
    private const int MostIterations = 10_000_000;

    private const int IvBytes = 12;
    private const int TagBytes = 16;
    private const int WrappedKeyBytes = 40;

    private const string WrongPassphrase = "wrong-passphrase";

    private const string Restore = "restore it from a copy";

    /// <summary>True when the file is a JWE, whole or not, and so needs a passphrase.</summary>
    internal static bool Is(ReadOnlySpan<byte> file)
    {
        file = file.TrimStart(" \t\r\n"u8);
        return file.StartsWith("eyJ"u8) || (file.StartsWith("{"u8) && HasJweMember(file));
    }

    /// <summary>What the file holds, or what is wrong.</summary>
    internal static Checked<byte[]> Open(byte[] file, string passphrase)
    {
        try
        {
            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file).Trim();
            var (envelope, fault) = text.StartsWith('{') ? Envelope.OfJson(text) : Envelope.OfCompact(text);
            fault ??= Fault(envelope!);
            if (fault is not null)
            {
                return Checked<byte[]>.Bad(fault);
            }

            Checked<byte[]>? first = null;
            foreach (string form in LetterForms.Of(passphrase))
            {
                var opened = Decrypt(envelope!, form);
                if (opened.Value is not null || opened.Issues[0].Code != WrongPassphrase)
                {
                    return opened;
                }

                first ??= opened;
            }

            return first!;
        }
        catch (Exception e) when (e is DecoderFallbackException or FormatException or JsonException or InvalidOperationException or InvalidCastException or ArgumentException)
        {
            return Checked<byte[]>.Bad(Damaged());
        }
    }

    internal static string ChecksumOf(string compact) => Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(compact)));

    internal static Issue Damaged() => new("damaged", string.Empty, "it is protected and was changed or damaged since it was saved, " + Restore);

    internal static Issue CutShort() => new("cut-short", string.Empty, "it is protected and ends before it should, so a part is missing, " + Restore);

    private static Issue? Fault(Envelope e)
    {
        if (e.Checksum is { } sum && (e.HasOuterHeader || sum != ChecksumOf(e.Compact)))
        {
            return Damaged();
        }

        if (Base64Url.Decode(e.Iv).Length != IvBytes || Base64Url.Decode(e.Tag).Length != TagBytes || Base64Url.Decode(e.EncryptedKey).Length != WrappedKeyBytes)
        {
            return e.IsCompact ? CutShort() : Damaged();
        }

        if (e.Header("alg") as string != "PBES2-HS512+A256KW" || e.Header("enc") as string != "A256GCM" || e.Header("zip") is not null || e.Header("crit") is not null)
        {
            return new("other-protection", string.Empty, "it is protected in a way that this program does not open, protect it with PBES2-HS512+A256KW and A256GCM and without compression");
        }

        return e.Header("p2c") is int iterations and >= FewestIterations and <= MostIterations && e.Header("p2s") is string salt && Base64Url.Decode(salt).Length >= 8
            ? null
            : new("other-protection", string.Empty, $"its protection has no salt or a number of iterations outside {FewestIterations} to {MostIterations}, protect it again");
    }

    private static Checked<byte[]> Decrypt(Envelope e, string passphrase)
    {
        try
        {
            string token = e.HasOuterHeader ? e.Json : e.Compact;
            return Checked<byte[]>.Good(JWE.Decrypt(token, passphrase, JweAlgorithm.PBES2_HS512_A256KW, JweEncryption.A256GCM, JoseSettings.Make()).PlaintextBytes);
        }
        catch (WrongKeyException)
        {
            string or = e.Checksum is null ? ", or its key was changed since" : string.Empty;
            return Checked<byte[]>.Bad(new Issue(WrongPassphrase, string.Empty, $"the passphrase does not open it{or}, check capital letters and the keyboard layout and try again"));
        }
        catch (Exception x) when (x is JoseException or ArgumentException or CryptographicException)
        {
            return Checked<byte[]>.Bad(new Issue("tampered", string.Empty, "the passphrase is right, but somebody changed the contents since it was protected, do not trust it and " + Restore));
        }
    }

    private static bool HasJweMember(ReadOnlySpan<byte> file)
    {
        var reader = new Utf8JsonReader(file, isFinalBlock: false, default);
        try
        {
            while (reader.Read())
            {
                // Nobody writes these names with escapes, and half a surrogate pair could not be compared.
                if (reader is { TokenType: JsonTokenType.PropertyName, CurrentDepth: 1, ValueIsEscaped: false }
                    && (reader.ValueTextEquals("recipients") || reader.ValueTextEquals("header") || IsPart(ref reader)))
                {
                    return true;
                }
            }
        }
        catch (JsonException)
        {
            // Damaged before the first member: then it is for the reader of open profiles to say so.
        }

        return false;
    }

    private static bool IsPart(ref Utf8JsonReader reader)
    {
        foreach (string part in Parts)
        {
            if (reader.ValueTextEquals(part))
            {
                return true;
            }
        }

        return false;
    }
}
