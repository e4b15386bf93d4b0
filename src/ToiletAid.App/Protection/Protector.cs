using System.Text.Json;
using Jose;

namespace ToiletAid.App.Protection;

/// <summary>
/// Encrypts profiles with a passphrase as a JWE (RFC 7516) with PBES2-HS512+A256KW and A256GCM,
/// so that any standard tool with the passphrase can open them.
/// </summary>
internal sealed class Protector
{
    /// <summary>
    /// Iterations of PBKDF2-HMAC-SHA512: the OWASP Password Storage Cheat Sheet, section PBKDF2, gives 220,000
    /// (seen in a copy of its text that dates from 2025 or later; 210,000 in the edition of 2023).
    /// </summary>
    internal const int Iterations = 220_000;

    private readonly JwtSettings _settings;
    private readonly string _passphrase;
    private readonly int _iterations;

    /// <summary>Creates one for a passphrase; the slow work is done once for all that it encrypts.</summary>
    internal Protector(string passphrase, int iterations = Iterations)
    {
        _passphrase = passphrase;
        _iterations = iterations;
        _settings = JoseSettings.Make();
    }

    /// <summary>One line: the JWE in its compact form.</summary>
    internal string Compact(byte[] plain) =>
        JWE.EncryptBytes(
            plain,
            [new(JweAlgorithm.PBES2_HS512_A256KW, _passphrase, new Dictionary<string, object>(StringComparer.Ordinal) { ["p2c"] = _iterations })],
            JweEncryption.A256GCM,
            mode: SerializationMode.Compact,
            extraProtectedHeaders: new Dictionary<string, object>(StringComparer.Ordinal) { ["cty"] = "json" },
            settings: _settings);

    /// <summary>A file: the JWE in its flattened JSON form, with a checksum that tells damage from a wrong passphrase.</summary>
    internal byte[] File(byte[] plain)
    {
        string compact = Compact(plain);
        string[] parts = compact.Split('.');
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            for (int i = 0; i < ProtectedFile.Parts.Length; i++)
            {
                json.WriteString(ProtectedFile.Parts[i], parts[i]);
            }

            // RFC 7516, 7.2.1: members that a reader does not know must be ignored.
            json.WriteString(ProtectedFile.Checksum, ProtectedFile.ChecksumOf(compact));
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }
}
