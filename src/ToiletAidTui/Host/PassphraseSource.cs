using System.Text;
using Microsoft.Win32.SafeHandles;
using ToiletAid.App.FileSystem;

namespace ToiletAidTui.Host;

/// <summary>
/// Where a passphrase comes from: a file, a file descriptor, or the terminal without echo. Never an argument, which every
/// program on the PC can read. It is read when the first protected profile needs it, and only once.
/// </summary>
/// <param name="terminal">Where it is asked for and complained about.</param>
/// <param name="file">Path of a file whose first line it is, or null.</param>
/// <param name="descriptor">Number of an open file whose first line it is, or null.</param>
public sealed class PassphraseSource(Terminal terminal, string? file, int? descriptor)
{
    private const int LongestBytes = 4096;

    private string? _known;
    private bool _asked;

    /// <summary>The passphrase, or null when there is none.</summary>
    public string? Get() => Get("Passphrase: ");

    /// <summary>Takes a passphrase that was typed on a screen, in place of one that was not the right one.</summary>
    internal void Know(string passphrase) => (_known, _asked) = (passphrase, true);

    /// <summary>The passphrase as far as it is known without typing: a drawn screen cannot ask for it.</summary>
    public string? GetUnasked() => _asked || file is not null || descriptor is not null ? Get() : null;

    /// <summary>The same source where nobody can type: what is known by now, or what a file says.</summary>
    internal PassphraseSource WithoutTyping() => new(terminal, file, descriptor) { _known = GetUnasked(), _asked = true };

    /// <summary>A new passphrase, typed twice at the terminal; null when there is none or it is not good enough.</summary>
    public string? Choose()
    {
        string? typed = Get("New passphrase: ");
        if (typed is null)
        {
            return null;
        }

        if (PassphraseRule.Fault(typed) is { } fault)
        {
            terminal.Error.WriteLine($"The passphrase {fault}.");
            return null;
        }

        if (file is null && descriptor is null && Type("The same again: ") != typed)
        {
            terminal.Error.WriteLine("The two are not the same. Start again.");
            return null;
        }

        return typed;
    }

    private string? Get(string prompt)
    {
        if (!_asked)
        {
            _asked = true;
            _known = file is not null || descriptor is not null ? FromFile() : Type(prompt);
        }

        return _known;
    }

    private string? FromFile()
    {
        string from = file ?? $"File descriptor {descriptor}";
        if (file is null && !Inherited.Has(descriptor!.Value))
        {
            return Complain($"{from} is not open.");
        }

        try
        {
            using var stream = file is not null ? new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 1)
                : new FileStream(new SafeFileHandle(descriptor!.Value, ownsHandle: false), FileAccess.Read, bufferSize: 1);
            return Line(stream)?.TrimStart('\uFEFF') is { Length: > 0 } line ? line : Complain($"{from} has no passphrase in its first line.");
        }
        catch (DecoderFallbackException e)
        {
            return Complain($"{from} is {(e.BytesUnknown is [0xFF or 0xFE, ..] ? "UTF-16" : "not UTF-8")}. Save it as UTF-8.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Complain($"{from} cannot be read, {FileFault.Reason(e)}.");
        }
    }

    private string? Type(string prompt)
    {
        if (!terminal.InputIsTerminal)
        {
            return null;
        }

        if (terminal.Keyboard is { IsAwake: true } keyboard)
        {
            Prompt(prompt);
            return keyboard.ReadLine(null, hidden: true) is { Length: > 0 } typed ? typed : null;
        }

        try
        {
            // The terminal itself and not standard input, whose reader may show what is typed or hold some of it back.
            using var tty = new FileStream("/dev/tty", FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 1);
            using var hidden = new HeldModes(tty.SafeFileHandle.DangerousGetHandle().ToInt32(), m => m.Hidden(), () => Prompt(prompt), drops: true);
            Prompt(prompt);
            string? line = Line(tty);
            terminal.Error.WriteLine();
            return line is { Length: > 0 } ? line : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or DecoderFallbackException)
        {
            return Complain("The passphrase cannot be typed here without being shown. Give it with --passphrase-file.");
        }
    }

    private void Prompt(string prompt)
    {
        terminal.Error.Write(prompt);
        terminal.Error.Flush();
    }

    private string? Complain(string sentence)
    {
        terminal.Error.WriteLine(sentence);
        return null;
    }

    private static string? Line(Stream stream)
    {
        var bytes = new List<byte>();
        int b;
        while ((b = stream.ReadByte()) >= 0 && b != '\n' && bytes.Count < LongestBytes)
        {
            bytes.Add((byte)b);
        }

        return b < 0 && bytes.Count == 0 ? null : new UTF8Encoding(false, throwOnInvalidBytes: true).GetString([.. bytes]).TrimEnd('\r');
    }
}
