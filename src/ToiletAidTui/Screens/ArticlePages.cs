using ToiletAid.App.Articles;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Screens;

/// <summary>From the kind to the article: what to look for, and whether the one in the hand is right.</summary>
internal static class ArticlePages
{
    private const string Question = "article";

    /// <summary>Both, for a list of what can be done with a result.</summary>
    /// <param name="session">The visit.</param>
    internal static Entry[] Entries(Func<Session> session) =>
    [
        new("What to look for in a shop", s => s.Push(new TextPage("look for", ["What to look for in a shop.", .. s.Services.LookFor(session())]))),
        new("Is this article right", s => s.Push(Kinds(s, session()))),
    ];

    private static Page Kinds(Shell shell, Session session) => shell.Services.Article(session) is not { } interview
        ? new TextPage(Question, ["No aid is recommended today, so no article is either."])
        : new ListPage("article kind", "Which kind does the article resemble most?", [],
        [
            .. interview.Choices.Select(kind => new Entry(kind.Name, s =>
            {
                // The list may be chosen from again, so each choice begins anew.
                var begun = s.Services.Article(session)!;
                begun.Submit(kind.Id);
                s.Push(Next(s, begun));
            })),
            new("Go back", s => s.Pop()),
        ]);

    /// <summary>The next question, with how it is found out; at the end the verdict.</summary>
    private static Page Next(Shell shell, ArticleInterview interview, string said = "") => interview.IsDone
        ? Verdict(shell, interview)
        : new EditPage(Question, [.. said.Length > 0 ? [said] : (string[])[], .. interview.Asking(), .. interview.Help()], interview.Wanted, $"Not taken. {interview.Wanted}", (s, typed) =>
        {
            var reply = typed.Equals("unknown", StringComparison.OrdinalIgnoreCase) ? interview.Unknown() : interview.Submit(typed);
            if (reply.Accepted)
            {
                s.Replace(Next(s, interview, reply.Text));
            }

            return reply.Accepted ? null : reply.Text;
        });

    private static ListPage Verdict(Shell shell, ArticleInterview interview)
    {
        var lines = shell.Services.Verdict(interview);
        return new("article verdict", lines[0], [.. lines.Skip(1)],
        [
            new("Go back", s => s.Pop()),
            new("Keep it in the clinic's stock", s => Keep(s, interview)),
        ]);
    }

    private static void Keep(Shell shell, ArticleInterview interview)
    {
        if (shell.Services.Stock is { } stock)
        {
            shell.Pop(shell.Services.KeepArticle(interview, stock));
            return;
        }

        shell.Replace(new EditPage("article file", ["Keep it in a file of the clinic's own aids, such as stock.json."], "File", "Not kept. File", (s, path) =>
        {
            if (path.Length == 0)
            {
                return "Nothing was typed.";
            }

            s.Pop(s.Services.KeepArticle(interview, path));
            return null;
        }));
    }
}
