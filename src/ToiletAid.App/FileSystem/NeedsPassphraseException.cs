namespace ToiletAid.App.FileSystem;

/// <summary>What belongs to a protected profile would have to be written in clear.</summary>
public sealed class NeedsPassphraseException : IOException
{
    /// <summary>Creates it.</summary>
    public NeedsPassphraseException()
        : base("the profile is protected and the passphrase is not known")
    {
    }

    /// <summary>Creates it with a message.</summary>
    public NeedsPassphraseException(string message)
        : base(message)
    {
    }

    /// <summary>Creates it with a message and its cause.</summary>
    public NeedsPassphraseException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
