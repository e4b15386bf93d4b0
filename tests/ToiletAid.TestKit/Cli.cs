using System.Text;
using ToiletAidTui.Commands;

namespace ToiletAid.TestKit;

/// <summary>Runs the program inside the test, as a script would: nothing is a terminal.</summary>
internal static class Cli
{
    internal static readonly DateTimeOffset Now = new(2026, 3, 9, 10, 0, 0, TimeSpan.Zero);

    internal static (int Code, string Output, string Error) Run(string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(input));
        int code = CliHost.Run(args, new() { Input = stream, Output = output, Error = error, Clock = new FixedClock() });
        return (code, output.ToString(), error.ToString());
    }

    private sealed class FixedClock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
