using System.Runtime.CompilerServices;

namespace ToiletAid.TestKit;

/// <summary>Compares text with a file that somebody has read and approved. ACCEPT=1 rewrites it, never in CI.</summary>
public static class Golden
{
    /// <summary>Fails with the first differing line when <paramref name="actual"/> is not the approved text.</summary>
    public static void Match(string actual, string name, [CallerFilePath] string testFile = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(testFile)!, "Approved", name);
        string text = actual.ReplaceLineEndings("\n");
        bool inCi = Environment.GetEnvironmentVariable("CI") == "true";
        if (!inCi && Environment.GetEnvironmentVariable("ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
            return;
        }

        string[] want = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n").Split('\n') : [];
        string[] got = text.Split('\n');
        for (int i = 0; i < Math.Max(want.Length, got.Length); i++)
        {
            string wanted = want.ElementAtOrDefault(i) ?? "(end)", received = got.ElementAtOrDefault(i) ?? "(end)";
            if (wanted != received)
            {
                throw new InvalidOperationException(
                    $"{path}, line {i + 1}\napproved: {wanted}\nreceived: {received}\nRead the change, then run the test with ACCEPT=1.");
            }
        }
    }
}
