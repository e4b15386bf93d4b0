using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>Keys, and those that readers, terminals and browsers keep for themselves.</summary>
public sealed class KeyTests
{
    [Fact]
    public void Every_action_has_a_key_that_nobody_else_takes()
    {
        Assert.All(KeyMap.BuiltIn, b => Assert.Contains(b.Keys, k => !TakenKeys.Takes(k)));
        Assert.Distinct(KeyMap.BuiltIn.SelectMany(b => b.Keys));
    }

    /// <summary>The mode line names both keys of each of its actions.</summary>
    [Fact]
    public void What_the_mode_line_names_and_going_back_have_two_keys()
    {
        var model = new Model();
        Assert.Equal("Full screen. F2 or Control P: linear. F1 or Control G: help. F9 or F10: menu.", model.ModeLine);
        Assert.All((Act[])[Act.Linear, Act.Help, Act.Menu, Act.Back, Act.Leave], a => Assert.Equal(2, KeyMap.BuiltIn.Single(b => b.Act == a).Keys.Length));
    }

    /// <summary>Chrome closes and opens pages with these whatever a page wants (browser_command_controller.cc, IsReservedCommandOrKey); Firefox quits with Control Q.</summary>
    [Fact]
    public void No_key_closes_a_page_or_the_browser() =>
        Assert.Empty(KeyMap.BuiltIn.SelectMany(b => b.Keys).Intersect(["Ctrl+N", "Ctrl+T", "Ctrl+W", "Ctrl+Q"]));

    [Fact]
    public void The_table_stands_in_the_accessibility_topic()
    {
        string topic = Cli.Run(string.Empty, "accessibility").Output;
        Assert.All(TakenKeys.All, r => Assert.Contains($"{r.Who}: ", topic, StringComparison.Ordinal));
        Assert.Contains("The reader yasr: Control A, Control L, Control N, Control X.", topic, StringComparison.Ordinal);
    }

    /// <summary>The section normalkeys of the reader's own configuration: a code below 32 is Control with a letter, 0x1b is Alt with a key.</summary>
    [Fact]
    public void The_keys_of_yasr_are_those_of_its_configuration()
    {
        const string configuration = "/etc/yasr/yasr.conf";
        Assert.SkipUnless(File.Exists(configuration), "yasr is not installed");
        var codes = File.ReadLines(configuration).SkipWhile(l => l != "[normalkeys]").Skip(1).TakeWhile(l => !l.StartsWith('['))
            .Where(l => l.StartsWith("0x", StringComparison.Ordinal)).Select(l => Convert.ToInt32(l[2..l.IndexOf(':', StringComparison.Ordinal)], 16));
        Assert.Equal(codes.Where(c => c is > 0 and < 27).Select(c => $"Ctrl+{(char)('A' + c - 1)}").Order(), Of("The reader yasr"));
    }

    /// <summary>The layout for terminals: a sequence without a parameter after a semicolon is a key without Shift, Alt or Control.</summary>
    [Fact]
    public void The_keys_of_Fenrir_are_those_of_its_layout_for_terminals()
    {
        const string layout = "/etc/fenrirscreenreader/keyboard/pty.conf";
        Assert.SkipUnless(File.Exists(layout), "Fenrir is not installed");
        var names = new Dictionary<string, string>
        {
            ["^["] = "Esc",
            ["^[OP"] = "F1",
            ["^[OQ"] = "F2",
            ["^[OR"] = "F3",
            ["^[OS"] = "F4",
            ["^[[15~"] = "F5",
            ["^[[17~"] = "F6",
            ["^[[18~"] = "F7",
            ["^[[19~"] = "F8",
            ["^[[20~"] = "F9",
            ["^[[21~"] = "F10",
            ["^[[23~"] = "F11",
            ["^[[24~"] = "F12",
        };
        var taken = File.ReadLines(layout).Where(l => l.StartsWith('^') && l.Contains('=', StringComparison.Ordinal)).Select(l => names.GetValueOrDefault(l[..l.IndexOf('=', StringComparison.Ordinal)])).OfType<string>();
        Assert.Equal(taken.Order(StringComparer.Ordinal), Of("The reader Fenrir inside a terminal"));
    }

    private static IEnumerable<string> Of(string who) => TakenKeys.All.Single(r => r.Who == who).Keys.Order(StringComparer.Ordinal);
}
