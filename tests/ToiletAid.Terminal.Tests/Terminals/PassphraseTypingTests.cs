using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>Typing that must not be seen, on a real terminal.</summary>
public sealed class PassphraseTypingTests : IDisposable
{
    private const string Right = "four quiet otters swim";

    private readonly Home _home = new();
    private readonly string _path;

    public PassphraseTypingTests()
    {
        _path = Path.Combine(_home.Path, "K-014.json");
        new ProfileStore(BuiltIn.Questions()).Add(_path, "K-014", NumberedVisit.Session(0), seen: null);
    }

    public void Dispose() => _home.Dispose();

    [Fact]
    public void A_passphrase_is_typed_twice_and_never_shown()
    {
        using (var terminal = Run("protect", _path))
        {
            string before = terminal.Stty();
            terminal.Until("New passphrase: ");
            terminal.Send(Right + "\n");
            terminal.Until("The same again: ");
            terminal.Send(Right + "\n");
            terminal.Until("Protected.");
            Assert.Equal(0, terminal.Exit());
            Assert.Equal(before, terminal.Stty());
            Assert.DoesNotContain("otters", terminal.All, StringComparison.Ordinal);
        }

        using (var terminal = Run("rank", _path))
        {
            terminal.Until("Passphrase: ");
            terminal.Send(Right + "\n");
            terminal.Until("K-014");
            Assert.Equal(0, terminal.Exit());
            Assert.DoesNotContain("otters", terminal.All, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Two_different_passphrases_protect_nothing()
    {
        using var terminal = Run("protect", _path);
        terminal.Until("New passphrase: ");
        terminal.Send(Right + "\n");
        terminal.Until("The same again: ");
        terminal.Send("four quiet otters swam\n");
        terminal.Until("The two are not the same.");

        Assert.Equal(3, terminal.Exit());
        Assert.False(ProfileFile.IsProtected(_path));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(15)]
    public void A_signal_while_a_passphrase_is_typed_gives_the_echo_back(int signal)
    {
        using var terminal = Run("protect", _path);
        string before = terminal.Stty();
        terminal.Until("New passphrase: ");
        Assert.NotEqual(before, terminal.Stty());

        terminal.Kill(signal);

        Assert.NotNull(terminal.Exit());
        Assert.Equal(before, terminal.Stty());
        Assert.False(ProfileFile.IsProtected(_path));
    }

    private PtySession Run(params string[] arguments) => new([BuiltProgram.Path, .. arguments], _home.Environment());
}
