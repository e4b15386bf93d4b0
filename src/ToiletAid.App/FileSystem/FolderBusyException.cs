namespace ToiletAid.App.FileSystem;

/// <summary>Another program kept the folder locked for longer than a save takes.</summary>
public sealed class FolderBusyException : IOException
{
    /// <summary>Creates it.</summary>
    public FolderBusyException()
        : base("another program is saving in this folder")
    {
    }

    /// <summary>Creates it with its cause.</summary>
    public FolderBusyException(Exception inner)
        : base("another program is saving in this folder", inner)
    {
    }

    /// <summary>Creates it with a message.</summary>
    public FolderBusyException(string message)
        : base(message)
    {
    }

    /// <summary>Creates it with a message and its cause.</summary>
    public FolderBusyException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
