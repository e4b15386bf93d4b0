using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Sessions;

/// <summary>The free note of a visit while it is written. Lines that are saved stay: a record is added to and not altered.</summary>
public sealed class SessionNote
{
    private int _saved;

    /// <summary>Said once, before the first line.</summary>
    public const string Advice = "Write what no question asks. Never write a name.";

    /// <summary>The lines, those that are saved too.</summary>
    public ImmutableArray<string> Lines { get; private set; } = [];

    /// <summary>The lines that are not saved yet.</summary>
    public ImmutableArray<string> Unsaved => Lines[_saved..];

    /// <summary>Called after each change, so that it can be kept.</summary>
    public Action OnChange { get; set; } = () => { };

    /// <summary>Takes a line as typed, after the others.</summary>
    public Reply Add(string typed) => Lines.Length >= NoteLine.Most
        ? new(false, $"A note has at most {NoteLine.Most} lines, so no more can be added.")
        : Take(typed, line => Lines = Lines.Add(line), $"Line {Lines.Length + 1} is kept.");

    /// <summary>Puts a line as typed in the place of another one, or takes that away when nothing is typed.</summary>
    /// <param name="index">Which line, from 0.</param>
    /// <param name="typed">As typed.</param>
    public Reply Change(int index, string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (typed.Trim() == Lines[index])
        {
            return new(true, $"Line {index + 1} stays as it is.");
        }

        if (index < _saved)
        {
            return new(false, $"Line {index + 1} is saved and stays as it is. Write a new line.");
        }

        if (typed.Trim().Length == 0)
        {
            Lines = Lines.RemoveAt(index);
            OnChange();
            return new(true, $"Line {index + 1} is removed.");
        }

        return Take(typed, line => Lines = Lines.SetItem(index, line), $"Line {index + 1} is changed.");
    }

    /// <summary>Takes up lines that were written before, in front of those that are there.</summary>
    public void TakeUp(ImmutableArray<string> lines) => Lines = [.. lines, .. Lines];

    /// <summary>Notes that all lines are saved.</summary>
    public void Saved() => _saved = Lines.Length;

    /// <summary>The lines to be read aloud.</summary>
    public IEnumerable<string> Read() => Lines.Select((line, i) => $"Note, line {i + 1}. {line}");

    private Reply Take(string typed, Action<string> keep, string said)
    {
        // A tab comes with what is pasted from a table, and a blank says the same.
        string line = typed.Replace('\t', ' ').Trim();
        if (NoteLine.Fault(line) is { } fault)
        {
            return new(false, $"The line {fault}.");
        }

        keep(line);
        OnChange();
        return new(true, said);
    }
}
