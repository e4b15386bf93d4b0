using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAidTui.Host;

/// <summary>A file that an option asked for beside the result.</summary>
internal static class OutputFile
{
    /// <summary>Why it would not be written, as a sentence, before any work is done for it; null when nothing is in the way.</summary>
    /// <param name="terminal">The terminal, with what else the command names.</param>
    /// <param name="path">As typed; null where no file is asked for.</param>
    internal static string? Fault(Terminal terminal, string? path) =>
        path is not null && Target(terminal, path) is { Value: null } refused ? Sentence(path, refused.Issues[0]) : null;

    /// <summary>Writes it whole or not at all; gives the sentence that says why not, or null.</summary>
    /// <param name="terminal">The terminal, with what else the command names.</param>
    /// <param name="path">As typed.</param>
    /// <param name="text">What it is to hold.</param>
    internal static string? Write(Terminal terminal, string path, string text)
    {
        var target = Target(terminal, path);
        var fault = target.TryGet(out var file) ? file.Write(Encoding.UTF8.GetBytes(text)) : target.Issues[0];
        return fault is null ? null : Sentence(path, fault);
    }

    /// <summary>The file, or why it is not written.</summary>
    internal static Checked<OutputTarget> Target(Terminal terminal, string path)
    {
        int own = terminal.Named.IndexOf(path);
        return OutputTarget.Of(path, own < 0 ? terminal.Named : terminal.Named.RemoveAt(own));
    }

    private static string Sentence(string path, Issue fault) => fault.Code == OutputTarget.CannotWrite
        ? $"{(path.Length == 0 ? "The file" : path)} could not be written, {fault.Message}."
        : fault.Sentence(path) + ".";
}
