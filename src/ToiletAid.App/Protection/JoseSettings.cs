using Jose;

namespace ToiletAid.App.Protection;

/// <summary>Settings of the JOSE library, so that only our algorithms run and nothing in it needs reflection.</summary>
internal static class JoseSettings
{
    static JoseSettings()
    {
        // Its parser looks here whatever settings it is given.
        JWT.DefaultSettings.JsonMapper = new JoseJson();
    }

    internal static JwtSettings Make() => new JwtSettings()
        .RegisterMapper(new JoseJson())
        .RegisterJwa(JweAlgorithm.PBES2_HS512_A256KW, new PassphraseKeyWrap());
}
