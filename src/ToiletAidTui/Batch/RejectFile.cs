using System.Text;
using System.Text.Json;
using ToiletAid.App.Files;

namespace ToiletAidTui.Batch;

/// <summary>Refused profiles with the reason, one a line, so that they can be mended and scored later. Only its owner may read it: what was refused may be a name.</summary>
/// <param name="file">The open file.</param>
internal sealed class RejectFile(FileStream file) : IDisposable
{
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
        buffer.WriteTo(file);
    }

    /// <inheritdoc/>
    public void Dispose() => file.Dispose();
}
