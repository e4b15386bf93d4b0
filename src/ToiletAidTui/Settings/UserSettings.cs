using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;

namespace ToiletAidTui.Settings;

/// <summary>Writes the user's own settings.</summary>
/// <param name="path">The user's file.</param>
internal sealed class UserSettings(string path)
{
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
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var root = File.Exists(path) ? JsonNode.Parse(File.ReadAllText(path)) as JsonObject ?? [] : [];
            var group = root;
            string[] names = definition.Name.Split(':');
            foreach (string outer in names[..^1])
            {
                if (group[outer] is not JsonObject inner)
                {
                    group[outer] = inner = [];
                }

                group = inner;
            }

            group[names[^1]] = value;
            WholeFile.Write(path, Encoding.UTF8.GetBytes(root.ToJsonString(new JsonSerializerOptions { WriteIndented = true }) + "\n"), keepRights: true);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{path} could not be written, {ProfileFile.Reason(e)}.";
        }
        catch (JsonException)
        {
            return $"{path} is not a file of settings. Restore it from a copy or delete it.";
        }
    }
}
