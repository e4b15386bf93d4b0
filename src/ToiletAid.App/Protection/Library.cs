using Jose;

namespace ToiletAid.App.Protection;

/// <summary>The JOSE library, set up so that only our algorithms run and nothing in it needs reflection.</summary>
internal static class Library
{
    static Library()
    {
        // Its parser looks here whatever settings it is given.
        JWT.DefaultSettings.JsonMapper = new JoseJson();
    }

    internal static JwtSettings Settings() => new JwtSettings()
        .RegisterMapper(new JoseJson())
        .RegisterJwa(JweAlgorithm.PBES2_HS512_A256KW, new PassphraseKeyWrap());
}
