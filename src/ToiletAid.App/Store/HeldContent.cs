using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Protection;

namespace ToiletAid.App.Store;

/// <summary>What a file seems to hold, from its beginning: enough to keep it from being replaced, also where it is damaged.</summary>
internal static class HeldContent
{
    private const int Beginning = 64 * 1024;

    /// <summary>What it holds that nobody asked to replace, such as "a profile"; null for anything else and for nothing.</summary>
    /// <param name="path">A file that is there.</param>
    internal static string? Precious(string path)
    {
        ReadOnlySpan<byte> start = Start(path);
        start = start.TrimStart("\uFEFF \t\r\n"u8);
        var members = Members(start);
        return ProtectedFile.Is(start) ? "a protected profile"
            : members.Contains("person") && members.Contains("sessions") ? "a profile"
            : members.Contains("aids") || members.Contains("addOns") || members.Contains("prices") ? "a file of aids"
            : members.Count == 0 && start.IndexOf("\"sessions\""u8) >= 0 && start.IndexOf("\"person\""u8) >= 0 ? "a damaged profile"
            : null;
    }

    /// <summary>True for a list of refused profiles, as a run over many writes it, and for nothing.</summary>
    internal static bool IsRejects(string path)
    {
        ReadOnlySpan<byte> start = Start(path);
        return start.IsEmpty || (Members(start) is var members && members.Contains("source") && members.Contains("reason") && members.Contains("line"));
    }

    private static byte[] Start(string path)
    {
        // Pipes show no length, and opening one may never end.
        if (new FileInfo(WholeFile.RealPath(path)).Length == 0)
        {
            return [];
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        byte[] start = new byte[Beginning];
        return TextForm.ToUtf8(start[..file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false)]);
    }

    /// <summary>Names of the outermost members, as far as the beginning can be read.</summary>
    private static HashSet<string> Members(ReadOnlySpan<byte> json)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        var reader = new Utf8JsonReader(json, isFinalBlock: false, new(new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true }));
        try
        {
            while (reader.Read() && !(reader.TokenType == JsonTokenType.EndObject && reader.CurrentDepth == 0))
            {
                if (reader is { TokenType: JsonTokenType.PropertyName, CurrentDepth: 1, ValueIsEscaped: false })
                {
                    names.Add(reader.GetString()!);
                }
            }
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            // Damaged from here on, or bytes that are not UTF-8.
        }

        return names;
    }
}
