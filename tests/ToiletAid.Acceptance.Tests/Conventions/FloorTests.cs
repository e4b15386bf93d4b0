using ToiletAid.App.Files;
using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Conventions;

public sealed class FloorTests
{
    private static readonly Floors App = new(
        typeof(BuiltIn).Assembly,
        "ToiletAid.App",
        "Typed", "FileSystem", "Files", "Protection", "Store", "Sessions", "Stock", "Wording", "Clinics", "Trials", "Panels", "Articles", "Pictures", "Calculators", "Documents", "Teaching", "Origins");

    private static readonly Floors Program = new(
        typeof(Terminal).Assembly,
        "ToiletAidTui",
        "Notices", "Host", "Keys", "Settings", "Visits", "Screens", "Linear", "FullScreen", "Modes", "Options", "Batch", "Commands");

    [Fact]
    public void Every_folder_is_a_floor() => Assert.Empty(App.Unlisted().Concat(Program.Unlisted()));

    [Fact]
    public void No_floor_of_the_application_uses_a_higher_one() => Assert.Empty(App.Upward());

    [Fact]
    public void No_floor_of_the_program_uses_a_higher_one() => Assert.Empty(Program.Upward());
}
