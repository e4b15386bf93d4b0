using System.Text;
using System.Text.Json;
using Jose;
using ToiletAid.App.Files;

namespace ToiletAid.App.Protection;

/// <summary>The parts of a JWE, before anything is decrypted.</summary>
internal sealed class Envelope
{
    /// <summary>Additional authenticated data (RFC 7516, 7.2.1).</summary>
    private const string AdditionalData = "aad";

    private readonly Dictionary<string, object?> _headers = new(StringComparer.Ordinal);

    private Envelope(string json, string[] parts)
    {
        Json = json;
        (Protected, EncryptedKey, Iv, Ciphertext, Tag) = (parts[0], parts[1], parts[2], parts[3], parts[4]);
        Add(new JoseJson().Parse<IDictionary<string, object>>(Encoding.UTF8.GetString(Base64Url.Decode(Protected))));
    }

    internal string Json { get; }

    internal string EncryptedKey { get; }

    internal string Iv { get; }

    internal string Tag { get; }

    internal string? Checksum { get; private init; }

    /// <summary>True when headers stand outside of the protected one, as some tools write them.</summary>
    internal bool HasOuterHeader { get; private set; }

    internal bool IsCompact => Json.Length == 0;

    internal string Compact => string.Join('.', Protected, EncryptedKey, Iv, Ciphertext, Tag);

    private string Protected { get; }

    private string Ciphertext { get; }

    internal static (Envelope? Envelope, Issue? Fault) OfCompact(string text)
    {
        string[] parts = text.Split('.');
        return parts.Length < ProtectedFile.Parts.Length ? (null, ProtectedFile.CutShort())
            : parts.Length > ProtectedFile.Parts.Length ? (null, ProtectedFile.Damaged())
            : (new(string.Empty, parts), null);
    }

    internal static (Envelope? Envelope, Issue? Fault) OfJson(string text)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text, JoseJson.Strict);
        }
        catch (JsonException)
        {
            return (null, JsonEnd.IsMissing(Encoding.UTF8.GetBytes(text)) ? ProtectedFile.CutShort() : ProtectedFile.Damaged());
        }

        using (document)
        {
            var root = document.RootElement;
            var recipient = root;
            if (root.TryGetProperty("recipients", out var recipients))
            {
                if (recipients.GetArrayLength() != 1)
                {
                    return (null, new("other-protection", string.Empty, "it is protected for several readers, which this program does not open, protect it for one passphrase"));
                }

                recipient = recipients[0];
            }

            string[] parts = [.. ProtectedFile.Parts.Select(p => Text(p == "encrypted_key" ? recipient : root, p))];
            var envelope = new Envelope(text, parts) { Checksum = root.TryGetProperty(ProtectedFile.Checksum, out var sum) ? sum.GetString() : null };
            envelope.AddOuter(root, "unprotected");
            envelope.AddOuter(recipient, "header");
            if (root.TryGetProperty(AdditionalData, out _))
            {
                // The library fails on one that is no text.
                _ = Text(root, AdditionalData);
                envelope.HasOuterHeader = true;
            }

            return (envelope, null);
        }
    }

    /// <summary>A header parameter wherever it stands, or null.</summary>
    internal object? Header(string name) => _headers.GetValueOrDefault(name);

    private static string Text(JsonElement e, string name) =>
        e.TryGetProperty(name, out var value) && value.GetString() is { } text ? text : throw new FormatException($"{name} is missing");

    private void AddOuter(JsonElement e, string name)
    {
        if (e.TryGetProperty(name, out var header))
        {
            HasOuterHeader = true;
            Add(new JoseJson().Parse<IDictionary<string, object>>(header.GetRawText()));
        }
    }

    private void Add(IDictionary<string, object> header)
    {
        foreach (var (name, value) in header)
        {
            if (!_headers.TryAdd(name, value))
            {
                throw new FormatException($"{name} appears in two headers");
            }
        }
    }
}
