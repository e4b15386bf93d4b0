using System.Runtime.CompilerServices;

namespace ToiletAid.TestKit;

/// <summary>Where the repository lies on this machine.</summary>
public static class Repository
{
    public static string Root { get; } = Find();

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string Find([CallerFilePath] string here = "") => System.IO.Path.GetFullPath(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "..", ".."));
}
