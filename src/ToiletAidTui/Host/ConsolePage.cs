using System.Text;

namespace ToiletAidTui.Host;

/// <summary>The code page of a Windows console, UTF-8 while the program writes to it. Elsewhere there is none.</summary>
internal sealed class ConsolePage : IDisposable
{
    private readonly Encoding _before;

    private ConsolePage(Encoding before)
    {
        _before = before;
        AppDomain.CurrentDomain.ProcessExit += Ended;
    }

    /// <summary>Sets it; null where there is nothing to set.</summary>
    internal static ConsolePage? Utf8()
    {
        if (!OperatingSystem.IsWindows())
        {
            return null;
        }

        try
        {
            var before = Console.OutputEncoding;
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
            return new(before);
        }
        catch (IOException)
        {
            // No console: bytes go on as they are.
            return null;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= Ended;
        Restore();
    }

    private void Ended(object? sender, EventArgs e) => Restore();

    private void Restore()
    {
        try
        {
            Console.OutputEncoding = _before;
        }
        catch (IOException)
        {
            // The console is gone.
        }
    }
}
