namespace ToiletAid.App.Protection;

/// <summary>The key made of the passphrase does not unwrap the content key. Not an exception of the library, which collects its own.</summary>
internal sealed class WrongKeyException(Exception inner) : Exception("the passphrase does not fit", inner);
