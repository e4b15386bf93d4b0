namespace ToiletAid.Acceptance.Tests.Batch;

/// <summary>Invented people for the tests of sets, made once.</summary>
internal static class People
{
    private static readonly Lazy<string> Made = new(() => Cli.Run("", "simulate", "--people", "14").Output);

    /// <summary>One profile a line.</summary>
    internal static string Ndjson => Made.Value;

    internal static string[] Lines => Ndjson.TrimEnd('\n').Split('\n');
}
