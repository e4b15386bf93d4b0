namespace ToiletAidTui.Host;

/// <summary>Keys of a terminal or a console, one by one, without the system's own editing of lines.</summary>
internal interface IKeys : IDisposable
{
    /// <summary>True while keys are read one by one.</summary>
    bool IsHeld { get; }

    /// <summary>Begins to read them one by one.</summary>
    /// <exception cref="IOException">There is no terminal any more.</exception>
    void Hold();

    /// <summary>Gives the terminal back as it was.</summary>
    void Release();

    /// <summary>The next key; null at the end of input.</summary>
    /// <param name="turn">Passed on while it waits; null where no signal is listened for.</param>
    TypedKey? Next(Turn? turn);
}
