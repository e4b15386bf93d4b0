using ToiletAid.App.Sessions;
using ToiletAidTui.Host;

namespace ToiletAidTui.Linear;

/// <summary>The free note of a visit line by line.</summary>
/// <param name="note">The note.</param>
/// <param name="lines">Where lines go.</param>
/// <param name="input">Where it is typed.</param>
/// <param name="echoesTyping">True when the terminal shows what is typed, with its line end.</param>
internal sealed class NoteDialogue(SessionNote note, SpeechLines lines, LineReader input, bool echoesTyping)
{
    private const string Word = "note ";

    /// <summary>What is noted when the word and the line are typed in one; null for anything else.</summary>
    internal static string? OneLine(string typed) =>
        typed.TrimStart() is var text && text.StartsWith(Word, StringComparison.OrdinalIgnoreCase) && text.Trim().Length > Word.Length ? text[Word.Length..] : null;

    /// <summary>Takes lines until an empty one; false when the input ended.</summary>
    /// <param name="isShown">True when the note was read out just now.</param>
    internal bool Run(bool isShown = false)
    {
        if (!isShown)
        {
            lines.Line(note.Lines.IsEmpty ? $"Note of this visit. {SessionNote.Advice}" : "Note of this visit.");
            lines.Lines(note.Read());
        }

        Hint();
        string before = string.Empty;
        while (true)
        {
            string? typed = lines.Ask($"{before}Note, line {note.Lines.Length + 1}: ", input, echoesTyping);
            before = string.Empty;
            switch (typed?.Trim().ToLowerInvariant())
            {
                case null:
                    return false;
                case "" or "back" or "quit" or "screen":
                    return true;
                case "help" or "?":
                    Hint();
                    break;
                case "repeat" or "list":
                    lines.Lines(note.Read().DefaultIfEmpty("Nothing is noted yet."));
                    break;
                case "erase":
                    before = Say(Erase());
                    break;
                default:
                    before = Say(note.Add(typed));
                    break;
            }
        }
    }

    private void Hint() => lines.Line("Enter alone ends the note. Erase removes the last line.");

    /// <summary>Says what came of it; gives what the next prompt begins with.</summary>
    private string Say(Reply reply) => lines.Say(reply) ? string.Empty : "Not taken. ";

    private Reply Erase() => note.Lines.IsEmpty ? new(false, "There is no line to remove.") : note.Change(note.Lines.Length - 1, string.Empty);
}
