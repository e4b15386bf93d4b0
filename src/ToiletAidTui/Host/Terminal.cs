using System.Collections.Immutable;
using ToiletAid.App.Files;

namespace ToiletAidTui.Host;

/// <summary>What the program talks to: passed in, so that every command can be run in a test.</summary>
public sealed class Terminal
{
    /// <summary>Where answers and profiles come from.</summary>
    public required Stream Input { get; init; }

    /// <summary>Where results go.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Where complaints go.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>True when a person types.</summary>
    public bool InputIsTerminal { get; init; }

    /// <summary>True when a person reads along.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>True when a person hears complaints and progress as they come.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Characters in a line; 0 when lines are not wrapped.</summary>
    public int Width { get; init; }

    /// <summary>Rows of the terminal; 0 when nothing is read page by page.</summary>
    public int Height { get; init; }

    /// <summary>The keyboard, where a person types and keys can be read one by one; null otherwise.</summary>
    internal Keyboard? Keyboard { get; init; }

    /// <summary>True when the terminal tells no size that anything can be drawn in.</summary>
    public bool HasNoSize { get; init; }

    /// <summary>Where the passphrase of protected profiles comes from.</summary>
    public PassphraseSource Passphrase { get => field ??= new(this, null, null); set; }

    /// <summary>Everything that the command line names and that may be a file: none of it is written over by accident.</summary>
    public ImmutableArray<string> Named { get; set; } = [];

    /// <summary>File of the clinic's own values as typed; null for that of the settings.</summary>
    internal string? Clinic { get; set; }

    /// <summary>The environment.</summary>
    public Func<string, string?> Variable { get; init; } = Environment.GetEnvironmentVariable;

    /// <summary>The clock.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>The day where the program runs.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    /// <summary>Lines of a result, wrapped where a person reads along.</summary>
    public SpeechLines Results => new(Output, OutputIsTerminal ? Width : 0);

    /// <summary>Lines of a dialogue, wrapped where a person types.</summary>
    public SpeechLines Dialogue => new(Talk, InputIsTerminal ? Width : 0);

    /// <summary>Lines as they are typed.</summary>
    /// <param name="turn">Passed on while it waits; null where no signal is listened for.</param>
    public LineReader Lines(Turn? turn = null) => new(Input, turn) { Keyboard = Keyboard };

    /// <summary>Tells what is wrong with some input, one sentence a fault.</summary>
    /// <param name="source">What the input is called.</param>
    /// <param name="issues">The faults.</param>
    public void Complain(string source, IEnumerable<Issue> issues)
    {
        ArgumentNullException.ThrowIfNull(issues);
        foreach (var issue in issues)
        {
            Error.WriteLine(issue.Sentence(source) + ".");
        }
    }

    /// <summary>Where a dialogue is written: with results sent elsewhere, questions must still be seen by the person who types.</summary>
    public TextWriter Talk => InputIsTerminal && !OutputIsTerminal ? Error : Output;
}
