using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Wording;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Screens;

namespace ToiletAid.Terminal.Tests.Readers;

/// <summary>A whole quick visit as each reader says it, in both modes, to the last word of the brief result. Approved texts are what was heard, and were read.</summary>
public sealed class HeardVisitTests
{
    /// <summary>Most words from the first to the last of the brief result.</summary>
    private const int Most = 900;

    private static readonly Answers Person = new ProfileFile(BuiltIn.Questions()).Read(DemoPeople.File("k-014-stiff-shoulder")).Value!.Latest.Answers;

    [Theory]
    [InlineData(Reader.Yasr, true)]
    [InlineData(Reader.Yasr, false)]
    [InlineData(Reader.Fenrir, true)]
    [InlineData(Reader.Fenrir, false)]
    public void A_quick_visit_is_heard_as_approved_and_within_900_words(string reader, bool isLinear)
    {
        string mode = isLinear ? "linear" : "screen";

        // Fenrir compares frames: on a machine under load it may see two screens as one, and leaves out a line that both have. Yasr once left out five
        // lines of a list in the midst of all other tests, and in no run since; why is not known. Then it is heard again.
        for (int tries = isLinear ? 1 : reader == Reader.Fenrir ? 3 : 2; tries > 0; tries--)
        {
            var (heard, words) = Visit(reader, isLinear);
            TestContext.Current.TestOutputHelper?.WriteLine($"{reader}, {mode}: {words} words");
            try
            {
                Golden.Match(heard, $"heard-{mode}.txt");
                Assert.InRange(words, 1, Most);
                return;
            }
            catch (InvalidOperationException) when (tries > 1)
            {
                TestContext.Current.TestOutputHelper?.WriteLine("not as approved, heard again");
            }
        }
    }

    private static (string Heard, int Words) Visit(string reader, bool isLinear)
    {
        var visit = new QuickVisit(Person);
        var model = visit.Model;
        using var aloud = new Reader(reader, $"assess --depth quick {(isLinear ? "--linear" : "--full-screen")}");
        var heard = new List<(string Key, string Said)> { ("start", Joined(aloud.Start(Prompt(model)))) };
        while (model.Shell.Current is QuestionPage)
        {
            var (line, keys) = visit.Answer();
            string typed = string.Empty, said = string.Empty, prompt = model.Answer;
            foreach (string key in keys)
            {
                bool wasTyping = model.Shell.Current.IsTyping && key != Keys.Enter;
                bool anew = model.Press(key);
                typed += key is Keys.Enter ? " Enter" : key == " " ? " Space" : key[0] < ' ' ? " Control U" : key;
                said += isLinear ? string.Empty : ' ' + Joined(wasTyping && !anew ? aloud.Type(key) : aloud.Press(key, model.Answer));
            }

            // What the terminal echoes of a line is not the program's word.
            heard.Add(isLinear ? (line, Without(Joined(aloud.Press(line + "\r", Prompt(model))), prompt, line)) : (typed.Trim(), said.Trim()));
        }

        string all = string.Join('\n', heard.SelectMany(h => WordWrap.Rows($"> {h.Key}", 100).Concat(WordWrap.Rows(h.Said, 100)))) + "\n";
        return (all, heard.Sum(h => BriefText.Words(h.Said)) - BriefText.Words(model.Shell.Lines[^1]) - BriefText.Words(model.Answer));
    }

    private static string Prompt(Model model) => model.Answer;

    /// <summary>What a reader says of the line with the cursor, as it was when its end was typed, depends on the moment at which it looks.</summary>
    private static string Without(string said, string prompt, string line)
    {
        foreach (string part in (string[])["blank", prompt])
        {
            said = said.StartsWith(part + " ", StringComparison.Ordinal) ? said[(part.Length + 1)..] : said;
        }

        while (said.Split(' ')[0] is { Length: > 0 } piece && line.Contains(piece, StringComparison.Ordinal))
        {
            said = said[piece.Length..].TrimStart();
        }

        return said;
    }

    /// <summary>The machine may be slow, and then says so; what is heard besides is the same.</summary>
    private static string Joined(IEnumerable<string> said) =>
        string.Join(' ', said).Replace("Working... Done. ", string.Empty, StringComparison.Ordinal);
}
