using System.Text;
using ToiletAid.App.FileSystem;
using ToiletAidTui.Commands;
using ToiletAidTui.Host;

// Streams are opened directly: the console's own reader and writer send escape sequences that screen readers speak.
var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
if (!Inherited.Has(1))
{
    if (Inherited.Has(2))
    {
        using var complaint = new StreamWriter(Console.OpenStandardError(), utf8) { NewLine = "\n" };
        complaint.WriteLine("Standard output is closed, so no result could be given. Nothing was done.");
    }

    return ExitCode.InputRefused;
}

// In the code page of a Windows console most of what is written here would be other characters. What follows in that console keeps its own.
using var page = ConsolePage.Utf8();
using var output = new StreamWriter(Console.OpenStandardOutput(), utf8, 16384) { NewLine = "\n" };
int width = Console.IsOutputRedirected ? 0 : Console.WindowWidth;
using var error = new ReadableWriter(new StreamWriter(Inherited.Has(2) ? Console.OpenStandardError() : Stream.Null, utf8) { NewLine = "\n", AutoFlush = true }, Inherited.Has(2) && !Console.IsErrorRedirected ? width : 0);
bool inputIsTerminal = Inherited.Has(0) && !Console.IsInputRedirected;
using var keyboard = inputIsTerminal ? Keyboard.OfInput(Console.IsOutputRedirected ? error : output) : null;
var terminal = new Terminal
{
    Input = Inherited.Has(0) ? Console.OpenStandardInput() : Stream.Null,
    Keyboard = keyboard,
    Output = output,
    Error = error,
    InputIsTerminal = inputIsTerminal,
    OutputIsTerminal = !Console.IsOutputRedirected,
    ErrorIsTerminal = Inherited.Has(2) && !Console.IsErrorRedirected,
    HasNoSize = !Console.IsOutputRedirected && (width <= 0 || Console.WindowHeight <= 0),
    Width = width,
    Height = Console.IsOutputRedirected ? 0 : Console.WindowHeight,
};
try
{
    int code = CliHost.Run(args, terminal);
    output.Flush();
    return code;
}
catch (IOException e)
{
    error.WriteLine($"The output could not be written, {FileFault.Reason(e)}.");
    return ExitCode.InputRefused;
}
#pragma warning disable CA1031 // The last door: one sentence and no stack of calls, and without the message, which may quote an answer.
catch (Exception e)
{
    error.WriteLine($"toiletaid has failed through a fault of its own, {e.GetType().Name}. Please report it with the command you typed.");
    return ExitCode.OurFault;
}
#pragma warning restore CA1031
