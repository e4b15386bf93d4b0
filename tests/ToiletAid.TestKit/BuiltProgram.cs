namespace ToiletAid.TestKit;

/// <summary>The program as built; TOILETAID_PROGRAM names another build, such as the published one.</summary>
internal static class BuiltProgram
{
    internal static string Path { get; } = Environment.GetEnvironmentVariable("TOILETAID_PROGRAM") is { Length: > 0 } named
        ? named
        : System.IO.Path.GetFullPath(System.IO.Path.Combine(AppContext.BaseDirectory, "..", "..", "ToiletAidTui", new DirectoryInfo(AppContext.BaseDirectory).Name, "toiletaid"));
}
