using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.Configuration.Memory;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;

namespace ToiletAidTui.Settings;

/// <summary>Reads the settings in layers: built in, machine, user, environment, option. The current folder is never looked at: on a shared PC anybody may have put a file there.</summary>
/// <param name="environment">The environment.</param>
/// <param name="machineFile">File of the machine.</param>
/// <param name="userFile">File of the user.</param>
internal sealed class SettingsReader(Func<string, string?> environment, string machineFile, string userFile)
{
    private const int MostBytes = 64 * 1024;

    /// <summary>The files of this machine and this user.</summary>
    internal static SettingsReader Usual(Func<string, string?> environment) => new(environment, MachineFile(), UserFile(environment));

    /// <summary>The user's file; empty when the user has no home.</summary>
    internal string UserPath => userFile;

    /// <summary>Reads every layer.</summary>
    /// <param name="options">What options on the command line set, by name of the setting.</param>
    /// <param name="fault">What is wrong, one sentence; null when nothing is.</param>
    internal SettingsSet? Read(IReadOnlyDictionary<string, string> options, out string? fault)
    {
        var layers = new List<(string Source, IConfigurationProvider Provider)>();
        fault = null;
        foreach (var (source, path) in new[] { ("from the machine's file", machineFile), ("from your own file", userFile) })
        {
            if (path.Length > 0 && File(path, out fault) is { } file)
            {
                layers.Add(($"{source} {path}", file));
            }

            if (fault is not null)
            {
                return null;
            }
        }

        var variables = SettingList.All.Where(d => environment(d.Variable) is { Length: > 0 }).ToDictionary(d => d.Name, d => environment(d.Variable));
        layers.Add(("from the environment", Memory(variables)));
        layers.Add(("from an option", Memory(options.ToDictionary(p => p.Key, string? (p) => p.Value))));

        var values = SettingList.All.Select(d => Value(d, layers)).ToList();
        fault = values.FirstOrDefault(v => !v.Definition.Takes(v.Value)) is { } bad
            ? $"The setting {bad.Definition.Name} is {bad.Value}, {bad.Source}, and takes {bad.Definition.Wanted}."
            : null;
        var settings = new SettingsSet(values);
        fault ??= settings.KeyFault;
        return fault is null ? settings : null;
    }

    private static SettingValue Value(SettingDefinition definition, List<(string Source, IConfigurationProvider Provider)> layers)
    {
        for (int i = layers.Count - 1; i >= 0; i--)
        {
            if (layers[i].Provider.TryGet(definition.Name, out string? value) && value is not null)
            {
                string source = layers[i].Source == "from the environment" ? $"from {definition.Variable} in the environment" : layers[i].Source;
                return new(definition, value, source);
            }
        }

        return new(definition, definition.BuiltIn, "built in");
    }

    private static MemoryConfigurationProvider Memory(IEnumerable<KeyValuePair<string, string?>> values) => new(new() { InitialData = values });

    /// <summary>The settings in a file; null when there is no such file.</summary>
    private static IConfigurationProvider? File(string path, out string? fault)
    {
        fault = null;
        try
        {
            if (!System.IO.File.Exists(path))
            {
                return null;
            }

            using var stream = System.IO.File.OpenRead(path);
            if (stream.Length > MostBytes)
            {
                fault = $"{path} is too large for a file of settings.";
                return null;
            }

            var root = (ConfigurationRoot)new ConfigurationBuilder().AddJsonStream(stream).Build();
            if (root.AsEnumerable().FirstOrDefault(p => p.Value is not null && SettingList.Find(p.Key) is null) is { Key: { } unknown })
            {
                fault = $"{path} sets {unknown}, and there is no such setting.";
            }

            return root.Providers.First();
        }
        catch (Exception e) when (e is FormatException or InvalidDataException or System.Text.Json.JsonException)
        {
            fault = $"{path} is not a file of settings. Restore it from a copy or delete it.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = $"{path} cannot be read, {FileFault.Reason(e)}.";
        }

        return null;
    }

    private static string MachineFile() => OperatingSystem.IsWindows()
        ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.CommonApplicationData), "toiletaid", "settings.json")
        : "/etc/toiletaid/settings.json";

    private static string UserFile(Func<string, string?> environment) =>
        OwnFolder.Settings(environment) is { Length: > 0 } folder ? Path.Combine(folder, "settings.json") : string.Empty;
}
