using System.Text;
using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Host;

/// <summary>What the console of Windows tells of keys (ConsoleKeyInfo), in lines that people type.</summary>
public sealed class WindowsKeysTests
{
    [Fact]
    public void Function_keys_Escape_and_Control_have_names_and_letters_are_letters()
    {
        using var keys = new WindowsKeys();
        Assert.Equal(new(default, "F2"), keys.Of(Key('\0', ConsoleKey.F2)));
        Assert.Equal(new(default, "Esc"), keys.Of(Key('\u001b', ConsoleKey.Escape)));
        Assert.Equal(TypedKey.Control('S'), keys.Of(Key('\u0013', ConsoleKey.S, ConsoleModifiers.Control)));
        Assert.Equal(TypedKey.EndOfInput, keys.Of(Key('\u001a', ConsoleKey.Z, ConsoleModifiers.Control)));
        Assert.Equal(TypedKey.Enter, keys.Of(Key('\r', ConsoleKey.Enter)));
        Assert.Equal(TypedKey.Backspace, keys.Of(Key('\b', ConsoleKey.Backspace)));
        Assert.Equal(TypedKey.Nothing, keys.Of(Key('\0', ConsoleKey.UpArrow)));
        Assert.Equal(new(new('é'), null), keys.Of(Key('é', ConsoleKey.E)));
    }

    [Fact]
    public void AltGr_types_a_character_and_two_halves_are_one()
    {
        using var keys = new WindowsKeys();
        Assert.Equal(new(new('@'), null), keys.Of(Key('@', ConsoleKey.Q, ConsoleModifiers.Control | ConsoleModifiers.Alt)));
        Assert.Equal(TypedKey.Nothing, keys.Of(Key('\ud83d', ConsoleKey.None)));
        Assert.Equal(new(new Rune(0x1F600), null), keys.Of(Key('\ude00', ConsoleKey.None)));
        Assert.Equal(TypedKey.Nothing, keys.Of(Key('\ude00', ConsoleKey.None)));
    }

    [Fact]
    public void A_line_is_edited_shown_and_ended_and_a_key_can_stand_for_a_word()
    {
        var shown = new StringWriter();
        using var keyboard = new Keyboard(new Pressed([Character('n'), Character('x'), TypedKey.Backspace, TypedKey.Nothing, Character('o'), TypedKey.Enter, new(default, "F2")]), shown) { Word = k => k == "F2" ? "screen" : null };
        Assert.Equal("no", keyboard.ReadLine(null));
        Assert.Equal("nx\b \bo\n", shown.ToString());
        Assert.Equal("screen", keyboard.ReadLine(null));
        Assert.Null(keyboard.ReadLine(null));
    }

    [Fact]
    public void What_is_hidden_is_not_shown_and_keys_add_nothing_to_it()
    {
        var shown = new StringWriter();
        using var keyboard = new Keyboard(new Pressed([Character('a'), new(default, "F2"), Character('é'), TypedKey.Backspace, Character('b'), TypedKey.Enter]), shown) { Word = _ => "screen" };
        Assert.Equal("ab", keyboard.ReadLine(null, hidden: true));
        Assert.Equal("\n", shown.ToString());
    }

    private static TypedKey Character(char c) => new(new(c), null);

    private static ConsoleKeyInfo Key(char character, ConsoleKey key, ConsoleModifiers modifiers = default) =>
        new(character, key, modifiers.HasFlag(ConsoleModifiers.Shift), modifiers.HasFlag(ConsoleModifiers.Alt), modifiers.HasFlag(ConsoleModifiers.Control));

    private sealed class Pressed(TypedKey[] keys) : IKeys
    {
        private int _next;

        public bool IsHeld => true;

        public void Hold()
        {
            // Always.
        }

        public void Release()
        {
            // Never.
        }

        public TypedKey? Next(Turn? turn) => _next < keys.Length ? keys[_next++] : null;

        public void Dispose()
        {
            // Nothing is held.
        }
    }
}
