namespace ToiletAid.TestKit;

/// <summary>Programs as built; a variable names another build, such as the published one.</summary>
internal static class BuiltProgram
{
    /// <summary>The program.</summary>
    internal static string Path { get; } = Find("TOILETAID_PROGRAM", "ToiletAidTui", "toiletaid");

    /// <summary>The program of a project.</summary>
    /// <param name="variable">The variable.</param>
    /// <param name="project">The project.</param>
    /// <param name="name">File name of the program.</param>
    internal static string Find(string variable, string project, string name) => Environment.GetEnvironmentVariable(variable) is { Length: > 0 } named
        ? named
        : System.IO.Path.GetFullPath(System.IO.Path.Combine(AppContext.BaseDirectory, "..", "..", project, new DirectoryInfo(AppContext.BaseDirectory).Name, name));
}
