using System.Text;
using ToiletAidTui.Commands;
using ToiletAidTui.Host;

// Streams are opened directly: the console's own reader and writer send escape sequences that screen readers speak.
var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
using var output = new StreamWriter(Console.OpenStandardOutput(), utf8, 16384) { NewLine = "\n" };
using var error = new StreamWriter(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true };
var terminal = new Terminal
{
    Input = Console.OpenStandardInput(),
    Output = output,
    Error = error,
    InputIsTerminal = !Console.IsInputRedirected,
    OutputIsTerminal = !Console.IsOutputRedirected,
    ErrorIsTerminal = !Console.IsErrorRedirected,
    Width = Console.IsOutputRedirected ? 0 : Console.WindowWidth,
};
try
{
    int code = CliHost.Run(args, terminal);
    output.Flush();
    return code;
}
catch (IOException e)
{
    error.WriteLine($"The output could not be written, {ToiletAid.App.Files.ProfileFile.Reason(e)}.");
    return ExitCode.InputRefused;
}
#pragma warning disable CA1031 // The last door: one sentence and no stack of calls, and without the message, which may quote an answer.
catch (Exception e)
{
    error.WriteLine($"toiletaid has failed through a fault of its own, {e.GetType().Name}. Nothing was changed. Please report it with the command you typed.");
    return ExitCode.OurFault;
}
#pragma warning restore CA1031
