using System.Text;
using System.Text.Json;
using ToiletAid.App.Files;

namespace ToiletAidTui.Batch;

/// <summary>Refused profiles with the reason, one a line, so that they can be mended and scored later. Only its owner may read it: what was refused may be a name.</summary>
internal sealed class RejectFile : IDisposable
{
    private readonly FileStream _file;

    /// <summary>Opens the file.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="append">True to add to what is there, as a resumed run does; otherwise it starts anew.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    internal RejectFile(string path, bool append)
    {
        var options = new FileStreamOptions { Mode = append ? FileMode.Append : FileMode.Create, Access = FileAccess.Write };
        if (OperatingSystem.IsWindows())
        {
            _file = new(path, options);
            return;
        }

        const UnixFileMode owner = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        options.UnixCreateMode = owner;
        _file = new(path, options);
        if (!WholeFile.IsDevice(WholeFile.RealPath(path)))
        {
            // The mode above is only that of a file that was not there.
            File.SetUnixFileMode(_file.SafeFileHandle, owner);
        }
    }

    /// <summary>Adds one.</summary>
    internal void Write(BatchInput input, IReadOnlyList<Issue> issues)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, JsonText.OneLine))
        {
            json.WriteStartObject();
            json.WriteString("source", input.Source);
            string line = input.Line == 0 ? string.Empty : $"line {input.Line}";
            json.WriteString("place", string.Join(", ", ((string[])[line, issues[0].Place]).Where(p => p.Length > 0)));
            json.WriteString("reason", string.Join(". ", issues.Select((issue, i) => i == 0 || issue.Place.Length == 0 ? issue.Message : $"At {issue.Place}, {issue.Message}")));
            json.WriteString("line", input.Utf8 is { } utf8 ? Encoding.UTF8.GetString(utf8) : null);
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        buffer.WriteTo(_file);
    }

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();
}
