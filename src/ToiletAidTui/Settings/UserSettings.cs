using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.App.FileSystem;

namespace ToiletAidTui.Settings;

/// <summary>Writes the user's own settings.</summary>
/// <param name="path">The user's file; empty when the account has no folder for it.</param>
internal sealed class UserSettings(string path)
{
    // The reader goes by names in any letters: the same name in other letters beside it would make the file unreadable.
    private static readonly JsonNodeOptions AnyLetters = new() { PropertyNameCaseInsensitive = true };

    private static readonly JsonDocumentOptions AsRead = new() { AllowDuplicateProperties = false, CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Sets one; gives why not, one sentence, or null.</summary>
    internal string? Set(string name, string value)
    {
        if (SettingList.Find(name) is not { } definition)
        {
            return $"There is no setting called {name}.";
        }

        if (!definition.Takes(value))
        {
            return $"The setting {definition.Name} takes {definition.Wanted}.";
        }

        if (path.Length == 0)
        {
            return "This account has no folder to keep settings in.";
        }

        try
        {
            string text = File.Exists(path) ? File.ReadAllText(path) : "{}";
            var root = JsonNode.Parse(text, AnyLetters, AsRead) as JsonObject ?? throw new JsonException("settings are an object");
            if (HasComments(text))
            {
                return $"{path} has comments, which would be lost. Change the setting there.";
            }

            Put(root, definition.Name.Split(':'), value);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            WholeFile.Write(path, Encoding.UTF8.GetBytes(root.ToJsonString(new JsonSerializerOptions { WriteIndented = true }) + "\n"), keepRights: true);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{path} could not be written, {FileFault.Reason(e)}.";
        }
        catch (Exception e) when (e is JsonException or ArgumentException)
        {
            // The base library says with the second that a name stands twice in different letters.
            return $"{path} is not a file of settings. Restore it from a copy or delete it.";
        }
    }

    private static bool HasComments(string text)
    {
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(text), new() { CommentHandling = JsonCommentHandling.Allow, AllowTrailingCommas = true });
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.Comment)
            {
                return true;
            }
        }

        return false;
    }

    private static void Put(JsonObject root, ReadOnlySpan<string> names, string value)
    {
        var group = root;
        foreach (string outer in names[..^1])
        {
            if (group[outer] is not JsonObject inner)
            {
                group[outer] = inner = new(AnyLetters);
            }

            group = inner;
        }

        group[names[^1]] = value;
    }
}
