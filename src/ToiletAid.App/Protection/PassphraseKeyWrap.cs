using System.Security.Cryptography;
using System.Text;
using Jose;

namespace ToiletAid.App.Protection;

/// <summary>
/// PBES2-HS512+A256KW (RFC 7518, 4.8) over the library's key wrap, with the system's PBKDF2, which is many times as fast as
/// the library's own. One salt serves all that one object encrypts: each content key is new, so a draft can be saved
/// after every answer without seconds of work.
/// </summary>
internal sealed class PassphraseKeyWrap : IKeyManagement
{
    private const string Algorithm = "PBES2-HS512+A256KW";
    private const int KeyBits = 256;
    private const int SaltBytes = 16;

    private readonly AesKeyWrapManagement _wrap = new(KeyBits);
    private readonly byte[] _salt = RandomNumberGenerator.GetBytes(SaltBytes);
    private byte[]? _key;

    /// <inheritdoc/>
    public byte[][] WrapNewKey(int cekSizeBits, object key, IDictionary<string, object> header)
    {
        byte[] contentKey = RandomNumberGenerator.GetBytes(cekSizeBits / 8);
        return [contentKey, WrapKey(contentKey, key, header)];
    }

    /// <inheritdoc/>
    public byte[] WrapKey(byte[] cek, object key, IDictionary<string, object> header)
    {
        int iterations = (int)header["p2c"];
        header["p2s"] = Base64Url.Encode(_salt);
        _key ??= Derive((string)key, _salt, iterations);
        return _wrap.WrapKey(cek, _key, header);
    }

    /// <inheritdoc/>
    public byte[] Unwrap(byte[] encryptedCek, object key, int cekSizeBits, IDictionary<string, object> header)
    {
        byte[] derived = Derive((string)key, Base64Url.Decode((string)header["p2s"]), Convert.ToInt32(header["p2c"], null));
        try
        {
            return _wrap.Unwrap(encryptedCek, derived, cekSizeBits, header);
        }
        catch (JoseException e)
        {
            throw new WrongKeyException(e);
        }
    }

    private static byte[] Derive(string passphrase, byte[] salt, int iterations)
    {
        byte[] salted = [.. Encoding.ASCII.GetBytes(Algorithm), 0, .. salt];
        return Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(passphrase), salted, iterations, HashAlgorithmName.SHA512, KeyBits / 8);
    }
}
