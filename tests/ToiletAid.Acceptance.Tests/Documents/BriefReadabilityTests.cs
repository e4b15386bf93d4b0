using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;

namespace ToiletAid.Acceptance.Tests.Documents;

/// <summary>How hard the brief result is to read, by two published formulas, over all invented people. It is for trained staff, so that the bar is a decision:
/// the eighth grade, which plain English asks for a general reader (common practice).</summary>
public sealed class BriefReadabilityTests
{
    private const double MostGrade = 8;

    /// <summary>The worked example of the article on the Coleman-Liau index: 639 letters, 119 words, 5 sentences (from memory).</summary>
    [Fact]
    public void Coleman_Liau_gives_the_worked_value() => Assert.Equal(14.5, Readability.ColemanLiau(639, 119, 5), 1);

    [Fact]
    public void The_brief_result_reads_at_the_eighth_grade_or_below()
    {
        var knowledge = BuiltIn.Knowledge();
        var advisor = new Advisor(knowledge, new());
        var grades = new List<(string Name, double Kincaid, double Liau)>();
        foreach (string file in DemoPeople.Files)
        {
            var answers = new ProfileFile(knowledge.Questions).Read(file).Value!.Latest.Answers;
            string text = string.Join(' ', new AdviceText(knowledge).Brief(advisor.Advise(answers), answers));
            grades.Add((Path.GetFileNameWithoutExtension(file), Readability.Of(text).FleschKincaid, Readability.ColemanLiau(text)));
        }

        TestContext.Current.TestOutputHelper?.WriteLine(string.Join('\n', grades.Select(g => FormattableString.Invariant($"{g.Name}: Flesch-Kincaid {g.Kincaid:0.0}, Coleman-Liau {g.Liau:0.0}"))));
        Assert.All(grades, g => Assert.True(g.Kincaid <= MostGrade && g.Liau <= MostGrade, FormattableString.Invariant($"{g.Name}: {g.Kincaid:0.0}, {g.Liau:0.0}")));
    }
}
