using ToiletAidTui.Commands;
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

    /// <summary>With a clock on which every work lasts long: told where a person listens, and the result is the same.</summary>
    [Theory]
    [InlineData("why", "k-014-stiff-shoulder")]
    [InlineData("next", "k-014-stiff-shoulder")]
    [InlineData("report", "k-014-stiff-shoulder")]
    [InlineData("compare", "visits/g-226-sore-hands")]
    public void Commands_that_compute_long_tell_it_beside_their_result(string command, string person)
    {
        string[] words = [command, DemoPeople.File(person)];
        var (code, output, error) = Cli.Run(string.Empty, words);
        using var result = new StringWriter { NewLine = "\n" };
        using var told = new StringWriter { NewLine = "\n" };
        int again = CliHost.Run(words, new() { Input = Stream.Null, Output = result, Error = told, ErrorIsTerminal = true, Clock = new HurriedClock() });
        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal((code, output), (again, result.ToString()));
        Assert.Equal("Working...\nDone.\n", told.ToString());
    }

    /// <summary>Each timer rings as soon as it is set.</summary>
    private sealed class HurriedClock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Cli.Now;

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            callback(state);
            return System.CreateTimer(_ => { }, null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        }
    }
}
