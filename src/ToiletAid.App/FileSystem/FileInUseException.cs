namespace ToiletAid.App.FileSystem;

/// <summary>Another program had a file open for longer than one that copies or searches folders does.</summary>
public sealed class FileInUseException : IOException
{
    /// <summary>Creates it.</summary>
    public FileInUseException()
        : base("another program has the file open")
    {
    }

    /// <summary>Creates it with its cause.</summary>
    public FileInUseException(Exception inner)
        : base("another program has the file open", inner)
    {
    }

    /// <summary>Creates it with a message.</summary>
    public FileInUseException(string message)
        : base(message)
    {
    }

    /// <summary>Creates it with a message and its cause.</summary>
    public FileInUseException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
