namespace ToiletAid.Terminal.Tests.Readers;

/// <summary>The program under a real screen reader, whose voice is written down in place of being spoken.</summary>
internal sealed class Reader : IDisposable
{
    internal const string Yasr = "yasr";
    internal const string Fenrir = "fenrir";

    /// <summary>What Fenrir says of itself on a machine without its library for spelling.</summary>
    private const string NoDictionary = "pychant is not installed";

    /// <summary>How long a busy machine may take until a key is heard. A key that is not heard at all costs a test that much.</summary>
    private static readonly TimeSpan Mute = TimeSpan.FromSeconds(8);

    private readonly TempFolder _folder = new();
    private readonly Home _home = new();
    private readonly string _voice;
    private readonly PtySession _terminal;
    private readonly int _settle;
    private int _heard;

    /// <summary>Starts the reader, which starts the program.</summary>
    /// <param name="name">The reader.</param>
    /// <param name="arguments">Arguments of the program.</param>
    internal Reader(string name, string arguments)
    {
        Tools.Need(name);
        _voice = _folder.File("voice.txt", string.Empty);
        string start = _folder.File("start.sh", $"#!/bin/bash\nexec {BuiltProgram.Path} {arguments}\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(start, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        string stand = Repository.Path("tests", "ToiletAid.Terminal.Tests", "Readers", $"{name}_voice.sh");
        string[] command = name == Yasr
            ? ["yasr", "-s", "emacspeak server", "-p", $"|{stand}", start]
            : ["fenrir", "-e", "-s", "/etc/fenrirscreenreader/settings/settings-pty.conf", "-o", string.Join(';',
                $"general#shell={start}", "speech#driver=genericDriver", $"speech#genericSpeechCommand={stand} fenrirText",
                "sound#enabled=False", "remote#enable=False", "general#autoSpellCheck=False", "general#punctuationLevel=none", $"general#debugFile={_folder.File("fenrir.log")}")];

        // Fenrir starts a program for each utterance, so it falls silent later.
        _settle = name == Yasr ? 250 : 500;
        _terminal = new(command, _home.Environment(("VOICE_LOG", _voice)));
    }

    /// <summary>What is said once the program has started.</summary>
    /// <param name="last">The end of it.</param>
    internal IReadOnlyList<string> Start(string last) => [.. Await(last, 0, TimeSpan.FromSeconds(60)).Where(s => s is not ("Start Fenrir" or NoDictionary))];

    /// <summary>Presses a key and gives what is said until the reader falls silent.</summary>
    /// <param name="key">The key.</param>
    /// <param name="last">The end of what is said; empty for anything.</param>
    internal IReadOnlyList<string> Press(string key, string last = "")
    {
        long length = new FileInfo(_voice).Length;
        _terminal.Send(key);
        return Await(last, length, last.Length > 0 ? TimeSpan.FromSeconds(30) : Mute);
    }

    /// <summary>Types what the reader says or not, as the person set it, and gives what it said: waited for until it shows, since nothing may be heard.</summary>
    internal IReadOnlyList<string> Type(string keys)
    {
        _terminal.Send(keys);
        var end = DateTime.UtcNow + Mute;
        while (_terminal.Quiet(50, 200).Length == 0 && DateTime.UtcNow < end)
        {
        }

        return Said();
    }

    /// <summary>What is said while nobody presses a key.</summary>
    internal IReadOnlyList<string> Wait(TimeSpan time)
    {
        var end = DateTime.UtcNow + time;
        while (DateTime.UtcNow < end)
        {
            _terminal.Quiet(100, 200);
        }

        return Said();
    }

    public void Dispose()
    {
        _terminal.EndAll();
        _terminal.Dispose();
        _folder.Dispose();
        _home.Dispose();
    }

    private List<string> Await(string last, long from, TimeSpan most)
    {
        var end = DateTime.UtcNow + most;
        while (DateTime.UtcNow < end && Plain(File.ReadAllText(_voice)[(int)from..]) is var said && (said.Length == 0 || !said.Contains(last, StringComparison.Ordinal)))
        {
            _terminal.Quiet(50, 200);
        }

        return Said();
    }

    private List<string> Said()
    {
        long length = -1;
        while (length != new FileInfo(_voice).Length)
        {
            length = new FileInfo(_voice).Length;
            _terminal.Quiet(_settle, _settle);
        }

        string[] lines = File.ReadAllLines(_voice);
        var said = lines[_heard..].Select(Plain).Where(s => s.Length > 0).ToList();
        _heard = lines.Length;
        return said;
    }

    /// <summary>Fenrir puts pauses in as commas of their own, and both keep runs of blanks.</summary>
    private static string Plain(string line) => string.Join(' ', line.Replace(" ,", string.Empty, StringComparison.Ordinal).Split((char[])[' ', '\t', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
