using System.Diagnostics.CodeAnalysis;
using System.Text;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Host;

/// <summary>Complaints name files, and a name may hold anything: nothing in it is handed to a terminal that would obey it.</summary>
/// <param name="inner">Where they go.</param>
/// <param name="width">Characters in a line; 0 for no wrapping.</param>
internal sealed class ReadableWriter(TextWriter inner, int width = 0) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    [AllowNull]
    public override string NewLine { get => inner.NewLine; set => inner.NewLine = value; }

    /// <inheritdoc/>
    public override void Write(char value) => inner.Write(value is '\n' or '\t' ? value : ReadableText.Shown(value.ToString())[0]);

    /// <inheritdoc/>
    public override void Write(string? value) => inner.Write(string.Join('\n', (value ?? string.Empty).Split('\n').Select(ReadableText.Shown)));

    /// <inheritdoc/>
    public override void WriteLine(string? value)
    {
        Write(string.Join('\n', (value ?? string.Empty).Split('\n').SelectMany(line => WordWrap.Lines(line, width))));
        inner.Write(NewLine);
    }

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }
}
