using System.Text;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Protection;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

public sealed class ProtectionTests
{
    private const string Right = "four Quiet otters \u00fcber";

    /// <summary>Few rounds where the number is not what is tested, to save time.</summary>
    private const int Few = 1000;

    private static readonly byte[] Plain = new ProfileWriter(BuiltIn.Questions()).Sealed(new("K-014", [NumberedVisit.Session(7)]), 4);

    [Fact]
    public void A_protected_file_opens_with_its_passphrase_and_shows_nothing_without()
    {
        byte[] file = new Protector(Right).File(Plain);

        Assert.Equal(Plain, ProtectedFile.Open(file, Right).Value);
        string text = Encoding.UTF8.GetString(file);
        Assert.DoesNotContain("K-014", text, StringComparison.Ordinal);
        Assert.DoesNotContain("stature", text, StringComparison.Ordinal);
    }

    /// <summary>OWASP Password Storage Cheat Sheet, PBKDF2-HMAC-SHA512: 220,000 rounds (210,000 in the edition of 2023).</summary>
    [Fact]
    public void The_header_names_the_algorithms_and_enough_rounds()
    {
        string header = Base64(JsonNode.Parse(new Protector(Right).File(Plain))!["protected"]!.ToString());
        var parsed = JsonNode.Parse(header)!;

        Assert.Equal("PBES2-HS512+A256KW", (string?)parsed["alg"]);
        Assert.Equal("A256GCM", (string?)parsed["enc"]);
        Assert.InRange((int)parsed["p2c"]!, 220_000, 10_000_000);
    }

    [Fact]
    public void Two_files_of_one_text_and_passphrase_share_no_salt_key_or_text()
    {
        JsonNode a = JsonNode.Parse(new Protector(Right, Few).File(Plain))!, b = JsonNode.Parse(new Protector(Right, Few).File(Plain))!;

        Assert.All((string[])["protected", "encrypted_key", "iv", "ciphertext", "tag"], part => Assert.NotEqual((string?)a[part], (string?)b[part]));
    }

    /// <summary>A header is an object; anything else in its place is damage and no fault of the program.</summary>
    [Theory]
    [InlineData("protected", "\"bnVsbA\"")] // null
    [InlineData("protected", "\"W10\"")] // []
    [InlineData("header", "null")]
    [InlineData("unprotected", "null")]
    [InlineData("unprotected", "7")]
    [InlineData("recipients", "null")]
    [InlineData("recipients", "[null]")]
    [InlineData("aad", "null")]
    public void A_header_that_is_no_object_is_told_as_damage(string member, string value)
    {
        var file = JsonNode.Parse(new Protector(Right, Few).File(Plain))!.AsObject();
        file.Remove("sha256");
        file[member] = JsonNode.Parse(value);

        Assert.Equal("damaged", Code(Encoding.UTF8.GetBytes(file.ToJsonString()), Right));
    }

    [Theory]
    [InlineData("null")]
    [InlineData("7")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("\"\"")]
    [InlineData("[{}]")]
    public void Nothing_that_can_stand_in_a_member_stops_the_program(string value)
    {
        foreach (string member in (string[])["protected", "unprotected", "header", "recipients", "encrypted_key", "iv", "ciphertext", "tag", "aad", "sha256"])
        {
            var file = JsonNode.Parse(new Protector(Right, Few).File(Plain))!.AsObject();
            file.Remove("sha256");
            file[member] = JsonNode.Parse(value);

            var opened = ProtectedFile.Open(Encoding.UTF8.GetBytes(file.ToJsonString()), Right);
            Assert.True(opened.Value is not null || opened.Issues.Length == 1, member);
        }
    }

    [Fact]
    public void A_wrong_passphrase_is_told() => Assert.Equal("wrong-passphrase", Code(new Protector(Right, Few).File(Plain), "four Quiet otters uber"));

    [Fact]
    public void A_file_that_was_cut_short_is_told_wherever_it_was_cut()
    {
        string whole = Encoding.ASCII.GetString(new Protector(Right, Few).File(Plain)).TrimEnd();
        foreach (int length in Enumerable.Range(16, whole.Length - 16))
        {
            Assert.Equal("cut-short", Code(Encoding.ASCII.GetBytes(whole[..length]), Right));
        }
    }

    /// <summary>Damage without intent leaves the checksum wrong, wherever it strikes.</summary>
    [Theory]
    [InlineData("protected")]
    [InlineData("encrypted_key")]
    [InlineData("iv")]
    [InlineData("ciphertext")]
    [InlineData("tag")]
    [InlineData("sha256")]
    public void Damage_is_told_apart_from_a_wrong_passphrase(string part) => Assert.Equal("damaged", Code(Changed(part, mendChecksum: false), Right));

    /// <summary>Whoever changes the contents can mend the checksum, but not the tag.</summary>
    [Theory]
    [InlineData("iv")]
    [InlineData("ciphertext")]
    [InlineData("tag")]
    public void Tampering_is_told_even_when_the_checksum_was_mended(string part) => Assert.Equal("tampered", Code(Changed(part, mendChecksum: true), Right));

    /// <summary>Nobody can tell a changed key or salt from a wrong passphrase; it is refused all the same.</summary>
    [Fact]
    public void A_tampered_key_is_refused() => Assert.Equal("wrong-passphrase", Code(Changed("encrypted_key", mendChecksum: true), Right));

    [Theory]
    [InlineData("dir", "A256GCM", 1000)]
    [InlineData("PBES2-HS512+A256KW", "A128CBC-HS256", 1000)]
    [InlineData("PBES2-HS512+A256KW", "A256GCM", 999)]
    [InlineData("PBES2-HS512+A256KW", "A256GCM", 10_000_001)]
    public void Other_algorithms_and_too_few_or_many_rounds_are_refused(string alg, string enc, int rounds)
    {
        var file = JsonNode.Parse(new Protector(Right, Few).File(Plain))!.AsObject();
        file.Remove("sha256");
        var header = JsonNode.Parse(Base64((string)file["protected"]!))!;
        (header["alg"], header["enc"], header["p2c"]) = (alg, enc, rounds);
        file["protected"] = Jose.Base64Url.Encode(Encoding.UTF8.GetBytes(header.ToJsonString()));

        Assert.Equal("other-protection", Code(Encoding.UTF8.GetBytes(file.ToJsonString()), Right));
    }

    /// <summary>python3-jwcrypto of Debian, told to take that many rounds.</summary>
    [Fact]
    public void An_outside_tool_opens_a_protected_profile()
    {
        OutsideTool.Needs(HasJwcrypto(), "the Python package jwcrypto (Debian python3-jwcrypto)");
        string token = Encoding.UTF8.GetString(new Protector(Right).File(Plain));

        var (code, output, error) = OutsideTool.Run("/usr/bin/python3", token, "-c", """
            import base64, sys
            from jwcrypto import jwa, jwe, jwk
            jwa.default_max_pbkdf2_iterations = 1000000
            key = jwk.JWK(kty='oct', k=base64.urlsafe_b64encode(sys.argv[1].encode()).decode().rstrip('='))
            token = jwe.JWE()
            token.deserialize(sys.stdin.read(), key)
            sys.stdout.buffer.write(token.payload)
            """, Right);

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(Encoding.UTF8.GetString(Plain), output);
    }

    /// <summary>The program jose of Debian 12 refuses more than 32,768 rounds (its fix of CVE-2023-50967), so this file has as many.</summary>
    [Fact]
    public void The_program_jose_opens_the_same_form_with_the_rounds_it_allows()
    {
        OutsideTool.Needs(OutsideTool.Exists("jose"), "jose (Debian jose)");
        using var folder = new TempFolder();

        var (code, output, error) = OutsideTool.Run("jose", Encoding.UTF8.GetString(new Protector(Right, iterations: 32_768).File(Plain)), "jwe", "dec", "-i", "-", "-k", KeyFile(folder));

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(Encoding.UTF8.GetString(Plain), output);
    }

    [Theory]
    [InlineData("""{"protected":{"alg":"PBES2-HS512+A256KW","enc":"A256GCM"}}""", "{}", false)]
    [InlineData("""{"protected":{"alg":"PBES2-HS512+A256KW","enc":"A256GCM"}}""", "{}", true)]
    [InlineData("""{"protected":{"enc":"A256GCM"}}""", """{"header":{"alg":"PBES2-HS512+A256KW"}}""", false)]
    public void A_profile_protected_with_the_program_jose_is_opened(string template, string recipient, bool compact)
    {
        OutsideTool.Needs(OutsideTool.Exists("jose"), "jose (Debian jose)");
        using var folder = new TempFolder();
        string plain = folder.File("plain.json", Encoding.UTF8.GetString(Plain)), made = folder.File("K-014.json");
        string[] args = ["jwe", "enc", "-i", template, "-r", recipient, "-I", plain, "-k", KeyFile(folder), "-o", made, .. compact ? ["-c"] : Array.Empty<string>()];

        var (code, _, error) = OutsideTool.Run("jose", string.Empty, args);

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal("K-014", new ProfileFile(BuiltIn.Questions()).Read(made, () => Right).Value!.Person);
        Assert.Equal("wrong-passphrase", Code(File.ReadAllBytes(made), "some other words"));
    }

    [Fact]
    public void A_save_to_a_protected_profile_keeps_it_protected()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var store = new ProfileStore(BuiltIn.Questions());
        File.WriteAllBytes(path, new Protector(Right).File(Plain));
        var seen = store.Open(path, () => Right).Value!;

        var saved = store.Add(path, "K-014", NumberedVisit.Session(8), seen, () => Right).Value!;

        Assert.True(saved.Stored.IsProtected);
        Assert.True(ProfileFile.IsProtected(path));
        Assert.True(ProfileFile.IsProtected(path + ".previous"));
        Assert.Equal([7, 8], store.Open(path, () => Right).Value!.Profile.Sessions.Select(NumberedVisit.Number));
    }

    private static string KeyFile(TempFolder folder) =>
        folder.File("key.jwk", $$"""{"kty":"oct","k":"{{Jose.Base64Url.Encode(Encoding.UTF8.GetBytes(Right))}}"}""");

    private static bool HasJwcrypto() =>
        File.Exists("/usr/bin/python3") && OutsideTool.Run("/usr/bin/python3", string.Empty, "-c", "import jwcrypto").Code == 0;

    private static string Code(byte[] file, string passphrase)
    {
        Assert.True(ProtectedFile.Is(file));
        return Assert.Single(ProtectedFile.Open(file, passphrase).Issues).Code;
    }

    private static string Base64(string text) => Encoding.UTF8.GetString(Jose.Base64Url.Decode(text));

    private static byte[] Changed(string part, bool mendChecksum)
    {
        var file = JsonNode.Parse(new Protector(Right, Few).File(Plain))!;
        string text = (string)file[part]!;
        file[part] = (text[0] == 'A' ? 'B' : 'A') + text[1..];
        if (mendChecksum)
        {
            file["sha256"] = ProtectedFile.ChecksumOf(string.Join('.', ProtectedFile.Parts.Select(p => (string)file[p]!)));
        }

        return Encoding.UTF8.GetBytes(file.ToJsonString());
    }
}
