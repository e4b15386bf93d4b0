using ToiletAid.App.Files;

namespace ToiletAidTui.Batch;

/// <summary>One profile before it is read, so that reading is shared among the cores.</summary>
/// <param name="Source">Path, or <c>-</c> for standard input.</param>
/// <param name="Line">Number of the line in it, from 1; 0 where the file is one profile.</param>
/// <param name="Utf8">The line; null for a file, and for a line that is too long to be kept.</param>
/// <param name="Fault">Why there is nothing to be read, or null.</param>
internal sealed record BatchInput(string Source, int Line, byte[]? Utf8, Issue? Fault)
{
    /// <summary>How it is called in messages.</summary>
    internal string Name => (Source, Line) switch
    {
        (BatchSource.StandardInput, 0) => "Standard input",
        (BatchSource.StandardInput, _) => $"Standard input line {Line}",
        (_, 0) => Source,
        _ => $"{Source} line {Line}",
    };
}
