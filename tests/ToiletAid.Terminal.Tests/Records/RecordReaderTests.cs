using System.Text.Json;

namespace ToiletAid.Terminal.Tests.Records;

/// <summary>Records read by two libraries that are not the one of the other tests: fhir and @medplum/core, both of npm.</summary>
public sealed class RecordReaderTests(ITestOutputHelper output)
{
    private const int Simulated = 10;

    [Fact]
    public void Other_libraries_read_every_record_without_a_fault()
    {
        using var folder = new TempFolder();
        string[] simulated = Cli.Run("", "simulate", "--people", "10", "--depth", "measured", "--seed", "24").Output.TrimEnd().Split('\n');
        string[] profiles = [.. DemoPeople.Names.Select(n => DemoPeople.File(n.Data)), .. Directory.GetFiles(Path.Combine(DemoPeople.Folder, "visits"), "*.json")];
        foreach (string profile in profiles)
        {
            folder.File(Path.GetFileName(profile), Record(profile));
        }

        for (int i = 0; i < Simulated; i++)
        {
            using var person = new TempFolder();
            folder.File($"simulated-{i}.json", Record(person.File("person.json", simulated[i])));
        }

        using var read = Read(folder.Path);
        Assert.Equal(profiles.Length + Simulated, read.RootElement.GetArrayLength());
        foreach (var record in read.RootElement.EnumerateArray())
        {
            string name = record.GetProperty("name").GetString()!;
            output.WriteLine($"{name}: {record.GetProperty("entries").GetInt32()} entries");
            Assert.Empty(record.GetProperty("first").EnumerateArray().Concat(record.GetProperty("second").EnumerateArray()).Select(f => $"{name}, {f.GetString()}"));
        }
    }

    [Fact]
    public void Both_find_what_is_wrong_with_a_record()
    {
        using var folder = new TempFolder();
        string record = Record(DemoPeople.File("k-014-stiff-shoulder"));
        folder.File("bad.json", record.Replace("\"status\": \"preliminary\"", "\"state\": \"preliminary\"", StringComparison.Ordinal));

        using var read = Read(folder.Path);
        Assert.NotEmpty(read.RootElement[0].GetProperty("first").EnumerateArray());
        Assert.NotEmpty(read.RootElement[0].GetProperty("second").EnumerateArray());
    }

    private static string Record(string profile) => Cli.Run("", "report", profile, "--kind", "record").Output;

    private static JsonDocument Read(string folder)
    {
        string modules = NodeModules.Of("Records", "@medplum", "core", "package.json");
        return JsonDocument.Parse(NodeModules.Run("node", NodeModules.Script("Records", "read.cjs"), modules, folder));
    }
}
