using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Commands;

/// <summary>Asks whether to go on with a visit that broke off, before a new one begins.</summary>
internal sealed class DraftQuestion(Terminal terminal, SpeechLines lines, LineReader input)
{
    /// <summary>Offers what was left beside the profile, then keeps what is answered.</summary>
    internal void Offer(AnswerDraft draft, Visit visit)
    {
        if (terminal.InputIsTerminal)
        {
            Ask(draft, visit);
        }

        draft.Attach(visit);
    }

    private void Ask(AnswerDraft draft, Visit visit)
    {
        foreach (string left in draft.Left())
        {
            var read = draft.Read(left);
            if (!read.TryGet(out var session))
            {
                terminal.Error.WriteLine($"{read.Issues[0].Sentence(left)}.");
                continue;
            }

            int count = session.Answers.Ids.Count();
            lines.Line($"A visit of {session.Date:yyyy-MM-dd} with {count} {(count == 1 ? "answer" : "answers")} was not finished.");
            if (IsYes("Go on with it? yes or no: "))
            {
                draft.TakeUp(left, session, visit);
                return;
            }

            if (IsYes("Erase it? yes or no: "))
            {
                draft.Drop(left);
            }
        }
    }

    private bool IsYes(string question)
    {
        lines.Prompt(question);
        return input.ReadLine()?.Trim().StartsWith("y", StringComparison.OrdinalIgnoreCase) ?? false;
    }
}
