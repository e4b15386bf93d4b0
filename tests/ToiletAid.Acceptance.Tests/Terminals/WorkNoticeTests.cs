using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Terminals;

/// <summary>Long work is told once when it has lasted a while and once when it is done; short work never.</summary>
public sealed class WorkNoticeTests
{
    [Theory]
    [InlineData(1.9, "")]
    [InlineData(2.0, "Working... Done.")]
    [InlineData(60.0, "Working... Done.")]
    public void Work_is_told_after_two_seconds_and_once(double seconds, string told)
    {
        var said = new List<string>();
        var clock = new HandClock();
        var notice = new WorkNotice(said.Add, clock);
        clock.Pass(TimeSpan.FromSeconds(seconds));
        notice.Dispose();
        notice.Dispose();
        clock.Pass(TimeSpan.FromSeconds(60));
        Assert.Equal(told, string.Join(' ', said));
    }

    [Fact]
    public void A_timer_that_comes_too_late_says_nothing()
    {
        var said = new List<string>();
        var clock = new HandClock { RingsAfterDisposal = true };
        new WorkNotice(said.Add, clock).Dispose();
        clock.Pass(TimeSpan.FromSeconds(3));
        Assert.Empty(said);
    }
}
