using System.Diagnostics;

namespace ToiletAid.Terminal.Tests.Readers;

/// <summary>Forty cells of braille, where there is a console to read: the line with the cursor is all that they show. There is one console for all.</summary>
public sealed class BrailleTests
{
    private const string Console = "9";

    [Fact(DisableParallelization = true)]
    public void Full_screen_shows_the_answer_line_after_each_key()
    {
        Assert.Equal(
            ["1 of 12. Numbers, or none:", "No: new numbness between the legs, 1 of", "No: new retention or incontinence, 2 of", "Yes: new retention or incontinence, 2 of", "None of them", "2 of 12. Numbers, or none:"],
            Cells(["assess", "--full-screen"], @"\x1b[B", @"\x1b[B", " ", "0", @"\r"));
    }

    [Fact(DisableParallelization = true)]
    public void Linear_shows_what_is_wanted_and_after_a_wrong_answer_that_it_was_wrong()
    {
        string[] cells = Cells(["assess", "--linear"], @"none\r", @"99\r", @"none\r");
        Assert.Equal(["1 of 12. Numbers, or none:", "2 of 12. Numbers, or none:", "Not 1 to 15. Numbers:"], cells[..3]);
        Assert.All(cells, c => Assert.InRange(c.Length, 1, 40));
    }

    private static string[] Cells(string[] arguments, params string[] keys)
    {
        Tools.Need("python3");
        if (!File.Exists("/dev/vcs") || !File.Exists("/dev/tty" + Console) || Environment.UserName != "root")
        {
            // Also in CI: a container without consoles cannot show what a console shows.
            Assert.Skip("there is no Linux console here that a braille program could read");
        }

        Tools.Need("brltty");
        using var home = new Home();
        string script = Repository.Path("tests", "ToiletAid.Terminal.Tests", "Readers", "braille_session.py");
        var start = new ProcessStartInfo("python3", [script, Console, .. keys, "--", BuiltProgram.Path, .. arguments])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in home.Environment())
        {
            start.Environment[name] = value;
        }

        start.Environment.Remove("DisableRealDriverIO");
        using var process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd(), error = process.StandardError.ReadToEnd();
        Assert.True(process.WaitForExit(60_000) && process.ExitCode == 0, error);
        return output.TrimEnd('\n').Split('\n');
    }
}
