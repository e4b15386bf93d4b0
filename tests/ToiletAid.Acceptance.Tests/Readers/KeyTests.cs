using ToiletAidTui.Keys;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>Keys, and those that readers, terminals and browsers keep for themselves.</summary>
public sealed class KeyTests
{
    /// <summary>A way is a key, or the menu's own key and then a letter; letters are typed, so nobody takes them.</summary>
    [Fact]
    public void Every_action_has_two_ways_or_more_and_a_key_that_nobody_else_takes()
    {
        Assert.All(KeyMap.BuiltIn, b => Assert.Contains(b.Keys, k => !TakenKeys.Takes(k)));
        Assert.All(KeyMap.BuiltIn, b => Assert.True(b.Keys.Length + b.Letter.Length >= 2, b.Name));
        Assert.Distinct(KeyMap.BuiltIn.SelectMany(b => b.Keys));
        Assert.Distinct(KeyMap.BuiltIn.Select(b => b.Letter));
    }

    /// <summary>Whoever uses one of the programs of the table still reaches every action by two ways, except the menu by one.</summary>
    [Fact]
    public void Beside_each_program_of_the_table_every_action_can_be_reached()
    {
        foreach (var row in TakenKeys.All)
        {
            Assert.All(KeyMap.BuiltIn, b => Assert.Contains(b.Keys, k => !row.Keys.Contains(k, StringComparer.OrdinalIgnoreCase)));
        }

        Assert.All(KeyMap.BuiltIn.Where(b => b.Action != KeyAction.Menu), b => Assert.Matches("^[A-Z]$", b.Letter));
    }

    /// <summary>The letter of the menu does what the key does: the page that comes is the same.</summary>
    [Theory]
    [InlineData(KeyAction.Help)]
    [InlineData(KeyAction.Answers)]
    [InlineData(KeyAction.Note)]
    [InlineData(KeyAction.Save)]
    [InlineData(KeyAction.Back)]
    [InlineData(KeyAction.Type)]
    [InlineData(KeyAction.Unknown)]
    [InlineData(KeyAction.Hide)]
    [InlineData(KeyAction.Leave)]
    [InlineData(KeyAction.Linear)]
    internal void The_letter_of_the_menu_does_what_the_key_does(KeyAction act)
    {
        var (byKey, byLetter) = (new Model(), new Model());
        byKey.Shell.Press(new(act));
        byLetter.Shell.Press(new(KeyAction.Menu));
        byLetter.Shell.Press(new(KeyAction.Text, KeyMap.BuiltIn.Single(b => b.Action == act).Letter.ToLowerInvariant()));
        Assert.Equal((byKey.Shell.Current.Name, byKey.Shell.IsHidden, byKey.Shell.Ending, byKey.Answer), (byLetter.Shell.Current.Name, byLetter.Shell.IsHidden, byLetter.Shell.Ending, byLetter.Answer));
    }

    /// <summary>No word of the linear mode means two things, and every action that it has can be typed.</summary>
    [Fact]
    public void In_linear_mode_every_action_has_a_word()
    {
        Assert.All(KeyMap.BuiltIn.Where(b => b.Action is not (KeyAction.How or KeyAction.Type)), b => Assert.NotNull(KeyWords.Typed(b.Action)));
        Assert.Distinct(KeyMap.BuiltIn.Where(b => b.Action != KeyAction.Menu).Select(b => KeyWords.Typed(b.Action)).OfType<string>());
    }

    /// <summary>Both forms of the manual hold the table, row by row.</summary>
    [Theory]
    [InlineData("text")]
    [InlineData("roff")]
    public void The_manual_holds_the_keys_and_those_that_others_take(string format)
    {
        string manual = string.Join(' ', Cli.Run(string.Empty, "man", "--format", format).Output.Replace("\\-", "-", StringComparison.Ordinal).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        string between = format == "roff" ? " " : ": ";
        Assert.All(TakenKeys.All.Where(r => !r.Keys.IsEmpty), r => Assert.Contains($"{r.Who}{between}{string.Join(", ", r.Keys.Select(KeyMap.Words))}.", manual, StringComparison.Ordinal));
        Assert.Contains($"Save{between}Control S, or F9 then S.", manual, StringComparison.Ordinal);
        Assert.Contains($"Record a trial{between}type trial.", manual, StringComparison.Ordinal);
    }

    /// <summary>The mode line names both keys of each of its actions.</summary>
    [Fact]
    public void What_the_mode_line_names_and_going_back_have_two_keys()
    {
        var model = new Model();
        Assert.Equal("Full screen. F2 or Control P: linear. F1 or Control G: help. F9 or F10: menu.", model.ModeLine);
        Assert.All((KeyAction[])[KeyAction.Linear, KeyAction.Help, KeyAction.Menu, KeyAction.Back, KeyAction.Leave], a => Assert.Equal(2, KeyMap.BuiltIn.Single(b => b.Action == a).Keys.Length));
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
