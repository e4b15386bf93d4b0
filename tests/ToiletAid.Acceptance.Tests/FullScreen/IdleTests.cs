extern alias TerminalGui;

using ToiletAidTui.FullScreen;
using Key = TerminalGui::Terminal.Gui.Input.Key;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>A screen that nobody looks after is hidden.</summary>
[Collection(nameof(OneScreen))]
public sealed class IdleTests
{
    [Fact]
    public void After_the_idle_time_the_screen_is_hidden_until_Enter()
    {
        var clock = new HandClock();
        var model = new Model(all: true);
        using var stage = new Stage(model.Shell, 80, 24, new FullScreenOptions { Clock = clock, IdleUntilHidden = TimeSpan.FromMinutes(10) });
        clock.Now += TimeSpan.FromMinutes(9);
        stage.GoRound();
        Assert.Contains("1 of", string.Join('\n', stage.Rows), StringComparison.Ordinal);
        stage.Press(Key.CursorDown);
        clock.Now += TimeSpan.FromMinutes(9);
        stage.GoRound();
        Assert.False(model.Shell.IsHidden);
        clock.Now += TimeSpan.FromMinutes(1);
        stage.GoRound();
        Assert.Equal(["The screen is hidden.", string.Empty, "Enter shows it again."], stage.Rows[1..4]);
        Assert.DoesNotContain("Question", string.Join('\n', stage.Rows), StringComparison.Ordinal);
        stage.Press(Key.D1);
        Assert.True(model.Shell.IsHidden);
        stage.Press(Key.Enter);
        Assert.Contains("1 of", string.Join('\n', stage.Rows), StringComparison.Ordinal);
    }

    [Fact]
    public void Nought_minutes_never_hide_it()
    {
        var clock = new HandClock();
        var model = new Model(all: true);
        using var stage = new Stage(model.Shell, 80, 24, new FullScreenOptions { Clock = clock });
        clock.Now += TimeSpan.FromDays(1);
        stage.GoRound();
        Assert.False(model.Shell.IsHidden);
    }

    private sealed class HandClock : TimeProvider
    {
        internal DateTimeOffset Now { get; set; } = new(2026, 3, 9, 10, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
