using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>What the program writes in a quick visit, counted without a reader: from its first word to the last of the brief result.</summary>
public sealed class VisitWordsTests
{
    private const int Most = 900;

    [Fact]
    public void A_quick_visit_is_at_most_900_words_in_both_modes()
    {
        var counts = new List<(string Name, int Linear, int Screen)>();
        foreach (string file in DemoPeople.Files)
        {
            var answers = new ProfileFile(BuiltIn.Questions()).Read(file).Value!.Latest.Answers;
            counts.Add((Path.GetFileNameWithoutExtension(file), BriefText.Words(QuickVisit.Linear(answers).ReplaceLineEndings(" ")), QuickVisit.FullScreen(answers).Sum(BriefText.Words)));
        }

        TestContext.Current.TestOutputHelper?.WriteLine(string.Join('\n', counts.Select(c => $"{c.Name}: {c.Linear} linear, {c.Screen} full screen")));
        Assert.All(counts, c => Assert.True(c.Linear <= Most && c.Screen <= Most, $"{c.Name}: {c.Linear} words in linear mode, {c.Screen} in full screen"));
    }
}
