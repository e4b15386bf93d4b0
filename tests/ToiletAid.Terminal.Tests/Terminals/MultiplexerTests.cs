using System.Diagnostics;
using System.Globalization;

namespace ToiletAid.Terminal.Tests.Terminals;

/// <summary>What a terminal with a screen of its own makes of it.</summary>
public sealed class MultiplexerTests
{
    [Theory]
    [InlineData(40, 12)]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void The_cursor_is_shown_on_the_answer_line_and_the_mouse_is_off(int columns, int rows)
    {
        Tools.Need("tmux");
        using var home = new Home();
        string socket = $"toiletaid-{Guid.NewGuid():N}";
        string Tmux(params string[] arguments) => Run("tmux", ["-L", socket, "-f", "/dev/null", .. arguments], home);
        try
        {
            Tmux("new-session", "-d", "-x", Text(columns), "-y", Text(rows), $"{BuiltProgram.Path} assess");
            Wait(() => Tmux("capture-pane", "-p").Contains("Numbers, or none:", StringComparison.Ordinal));
            string before = Tmux("capture-pane", "-p");
            Check();
            Tmux("send-keys", "Down");
            Wait(() => Tmux("capture-pane", "-p") != before);
            Thread.Sleep(300);
            string[] was = before.Split('\n'), now = Tmux("capture-pane", "-p").Split('\n');
            int row = Check();
            Assert.All(Enumerable.Range(0, row), y => Assert.Equal(was[y], now[y]));
            Assert.Contains("new numbness between", now[row], StringComparison.Ordinal);

            int Check()
            {
                string[] state = Tmux("display", "-p", "#{cursor_x} #{cursor_y} #{cursor_flag} #{alternate_on} #{mouse_any_flag}").Trim().Split(' ');
                Assert.Equal(["0", "1", "1", "0"], [state[0], state[2], state[3], state[4]]);
                return int.Parse(state[1], CultureInfo.InvariantCulture);
            }
        }
        finally
        {
            Tmux("kill-server");
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Wait(Func<bool> there)
    {
        var end = DateTime.UtcNow.AddSeconds(60);
        while (!there())
        {
            Assert.True(DateTime.UtcNow < end, "the screen did not come");
            Thread.Sleep(50);
        }
    }

    private static string Run(string program, string[] arguments, Home home)
    {
        var start = new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in home.Environment())
        {
            start.Environment[name] = value;
        }

        start.Environment.Remove("TMUX");
        start.Environment.Remove("DisableRealDriverIO");
        using var process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
