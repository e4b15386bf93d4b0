using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>What a quick visit costs somebody who knows it by heart, beside the same questions on paper.</summary>
public sealed class ClerkTests
{
    /// <summary>A key is a character, Enter, Space or Control with a letter. The form on paper has every question that a quick visit can ask, since paper cannot
    /// leave out what does not matter: its words are those of questions and options, its marks one for each answer that this person has.</summary>
    [Fact]
    public void Keys_and_words_of_a_quick_visit_stand_beside_those_of_a_paper_form()
    {
        var questions = BuiltIn.Questions().All.Where(q => q.Depths.Contains(Depth.Quick)).ToList();
        int printed = questions.Sum(q => BriefText.Words(q.Prompt) + q.Options.Sum(o => BriefText.Words(o.Label)) + q.Parts.Sum(p => BriefText.Words(p.Label)));
        var lines = new List<string>
        {
            "# A quick visit by somebody who knows it", string.Empty,
            $"On paper: {questions.Count} questions, {printed} words to print, no result.", string.Empty,
            "| person | questions asked | keys, linear | keys, one key | keys, full screen | words, linear | words, full screen | marks on paper |",
            "|---|---|---|---|---|---|---|---|",
        };
        foreach (string file in DemoPeople.Files)
        {
            lines.Add(Row(Path.GetFileNameWithoutExtension(file), new ProfileFile(BuiltIn.Questions()).Read(file).Value!.Latest.Answers, questions));
        }

        Golden.Match(string.Join('\n', lines) + "\n", "Clerk.md");
    }

    private static string Row(string name, Answers answers, List<Question> questions)
    {
        var visit = new QuickVisit(answers);
        var (asked, line, one, screen) = (0, 0, 0, 0);
        while (visit.Model.Shell.Current is ToiletAidTui.Screens.QuestionPage page)
        {
            var (typed, keys) = visit.Answer();
            (asked, line, screen) = (asked + 1, line + typed.Length + 1, screen + keys.Length);
            one += page is ToiletAidTui.Screens.ChoicePage && keys.Length == 2 ? 1 : keys.Length;
            Array.ForEach(keys, k => visit.Model.Press(k));
        }

        int words = BriefText.Words(QuickVisit.Linear(answers).ReplaceLineEndings(" ")), shown = QuickVisit.FullScreen(answers).Sum(BriefText.Words);
        int marks = questions.Sum(q => answers[q.Id]?.Value is AnswerValue.Many m ? Math.Max(m.Options.Length, 1) : answers[q.Id] is null ? 0 : 1);
        return string.Create(CultureInfo.InvariantCulture, $"| {name} | {asked} | {line} | {one} | {screen} | {words} | {shown} | {marks} |");
    }
}
