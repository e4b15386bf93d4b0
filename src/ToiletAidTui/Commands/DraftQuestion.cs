using ToiletAid.App.Files;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Commands;

/// <summary>Asks whether to go on with a visit that broke off, before a new one begins.</summary>
internal sealed class DraftQuestion(Terminal terminal, SpeechLines lines, LineReader input)
{
    /// <summary>The visit to go on with and the file that it is kept in; null for a new one.</summary>
    internal (string Draft, Profile Kept)? Ask(AnswerDraft? each)
    {
        // A script must not be given the answers of somebody else.
        foreach (string left in terminal.InputIsTerminal && each is not null ? each.Left() : [])
        {
            var read = each!.Read(left);
            if (!read.TryGet(out var kept))
            {
                terminal.Error.WriteLine($"{read.Issues[0].Sentence(left)}.");
                OfferToErase(left);
                continue;
            }

            int count = kept.Latest.Answers.Ids.Count();
            lines.Line($"A visit of {IsoDay.Of(kept.Latest.Date)} with {count} {(count == 1 ? "answer" : "answers")} was not finished.");
            if (lines.AskYes("Go on with it?", input))
            {
                return (left, kept);
            }

            OfferToErase(left);
        }

        return null;
    }

    private void OfferToErase(string left)
    {
        if (lines.AskYes("Erase it?", input) && AnswerDraft.Remove(left) is { } fault)
        {
            terminal.Error.WriteLine(fault);
        }
    }
}
