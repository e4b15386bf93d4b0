using System.Text.Json;
using ToiletAidTui.Settings;

namespace ToiletAid.Acceptance.Tests.Modes;

/// <summary>Settings in layers, each with where it came from.</summary>
public sealed class SettingsTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Each_layer_hides_the_one_below_and_says_where_it_came_from()
    {
        var reader = Reader("""{"mode":"linear","contrast":"high","idle-minutes":1}""", """{"mode":"full-screen","keys":{"help":"F6"}}""", ("TOILETAID_IDLE_MINUTES", "3"));
        var settings = reader.Read(new Dictionary<string, string> { [SettingList.ClearOnLeaving] = "yes" }, out string? fault);
        Assert.Null(fault);
        Assert.Equal(
            ["mode full-screen from your own file", "contrast high from the machine's file", "idle-minutes 3 from TOILETAID_IDLE_MINUTES in the environment", "clear-on-leaving yes from an option"],
            settings!.Values.Take(4).Select(v => $"{v.Definition.Name} {v.Value} {v.Source.Split(" /")[0]}"));
        Assert.Equal(ToiletAidTui.Keys.KeyAction.Help, settings.Keys.Find("F6"));
        Assert.Null(settings.Keys.Find("F1"));
        Assert.Equal("built in", settings.Values.First(v => v.Definition.Name == "keys:menu").Source);
    }

    [Theory]
    [InlineData("""{"mode":"plain"}""", "The setting mode is plain, from your own file")]
    [InlineData("""{"moed":"linear"}""", "sets moed, and there is no such setting.")]
    [InlineData("""{"mode":""", "is not a file of settings.")]
    [InlineData("""{"idle-minutes":"soon"}""", "takes a whole number from 0 to 480.")]
    [InlineData("""{"keys":{"help":"a"}}""", "takes F1 to F12")]
    [InlineData("""{"keys":{"help":"F2"}}""", "The key F2 is given to two actions.")]
    public void A_wrong_value_is_named_with_its_place(string user, string wanted)
    {
        Assert.Null(Reader("{}", user).Read(new Dictionary<string, string>(), out string? fault));
        Assert.Contains(wanted, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_setting_of_ones_own_is_kept_beside_the_others()
    {
        string path = _folder.File("user.json", """{"contrast":"high"}""");
        Assert.Null(new UserSettings(path).Set("mode", "linear"));
        Assert.Null(new UserSettings(path).Set("keys:hide", "F7 Ctrl+L"));
        var settings = new SettingsReader(_ => null, string.Empty, path).Read(new Dictionary<string, string>(), out _);
        Assert.Equal(("linear", "high", "F7 Ctrl+L"), (settings![SettingList.Mode], settings[SettingList.Contrast], settings["keys:hide"]));
        Assert.Equal("There is no setting called colour.", new UserSettings(path).Set("colour", "red"));
        Assert.Equal("The setting mode takes linear or full-screen.", new UserSettings(path).Set("mode", "plain"));
    }

    /// <summary>Names of settings are read in any letters, so a second one in other letters would make the file unreadable.</summary>
    [Fact]
    public void A_setting_that_stands_there_in_other_letters_is_changed_and_not_added()
    {
        string path = _folder.File("user.json", """{"Mode":"linear","KEYS":{"Help":"F6"}}""");
        Assert.Null(new UserSettings(path).Set("mode", "full-screen"));
        Assert.Null(new UserSettings(path).Set("keys:help", "F5"));
        var settings = new SettingsReader(_ => null, string.Empty, path).Read(new Dictionary<string, string>(), out string? fault);
        Assert.Null(fault);
        Assert.Equal(("full-screen", "F5"), (settings![SettingList.Mode], settings["keys:help"]));
    }

    [Theory]
    [InlineData("[1]", "is not a file of settings.")]
    [InlineData("""{"mode":"linear","mode":"linear"}""", "is not a file of settings.")]
    [InlineData("{\"mode\":\"linear\" // for the reader\n}", "has comments, which would be lost.")]
    public void A_file_that_would_lose_something_is_left_as_it_is(string text, string wanted)
    {
        string path = _folder.File("user.json", text);
        Assert.Contains(wanted, new UserSettings(path).Set("contrast", "high"), StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(path));
    }

    [Fact]
    public void The_command_shows_every_setting_as_text_and_as_data()
    {
        var (code, output, error) = Cli.Run(string.Empty, "settings");
        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(SettingList.All.Length, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        using var json = JsonDocument.Parse(Cli.Run(string.Empty, "settings", "--format", "json").Output);
        Assert.Equal(SettingList.All.Select(d => d.Name), json.RootElement.EnumerateArray().Select(e => e.GetProperty("name").GetString()));
        Assert.All(json.RootElement.EnumerateArray(), e => Assert.NotEqual(string.Empty, e.GetProperty("source").GetString()));
    }

    private SettingsReader Reader(string machine, string user, params (string Name, string Value)[] environment) =>
        new(n => environment.FirstOrDefault(e => e.Name == n).Value, _folder.File("machine.json", machine), _folder.File("user.json", user));
}
