using System.Text;
using ToiletAidTui.Commands;

namespace ToiletAid.TestKit;

/// <summary>Runs the program inside the test, as a script would: nothing is a terminal.</summary>
internal static class Cli
{
    internal static readonly DateTimeOffset Now = new(2026, 3, 9, 10, 0, 0, TimeSpan.Zero);

    internal static (int Code, string Output, string Error) Run(string input, params string[] args)
    {
        return RunAt(Day(args), input, args);
    }

    /// <summary>Nothing of a test comes into the data folder of whoever runs it.</summary>
    private static readonly string Data = Directory.CreateTempSubdirectory("toiletaid-data-").FullName;

    private static string? Variable(string name) => name == "XDG_DATA_HOME" ? Data : Environment.GetEnvironmentVariable(name);

    /// <summary>A command that names a later day is run on that day.</summary>
    private static DateTimeOffset Day(string[] args) =>
        Array.IndexOf(args, "--date") is >= 0 and var at && DateOnly.TryParse(args[at + 1], System.Globalization.CultureInfo.InvariantCulture, out var day) && day > DateOnly.FromDateTime(Now.DateTime)
            ? new(day, new(10, 0), TimeSpan.Zero)
            : Now;

    internal static (int Code, string Output, string Error) RunAt(DateTimeOffset now, string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(input));
        int code = CliHost.Run(args, new() { Input = stream, Output = output, Error = error, Clock = new FixedClock(now), Variable = Variable });
        return (code, output.ToString(), error.ToString());
    }

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }
}
