using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Acceptance.Tests.Documents;

public sealed class ReadabilityTests(ITestOutputHelper output)
{
    /// <summary>Patient education is asked to be at the sixth grade at most (American Medical Association, as quoted in J Med Libr Assoc 2018, 106:262).
    /// One grade less is a decision of this project.</summary>
    private const double MostGrade = 5;

    /// <summary>A decision of this project: what is heard in one breath.</summary>
    private const int MostWords = 20;

    private const int Simulated = 10;

    /// <summary>SMOG reads about three grades higher on the same handouts (9.6 against 6.5 in the same study), so its bar is a decision.</summary>
    private const double MostSmog = 8;

    [Fact]
    public void Flesch_Kincaid_gives_the_worked_value() =>
        // words/flesch-kincaid, index.js at 3bf9956: 100 words, 10 sentences, 150 syllables.
        Assert.Equal(6.01, Readability.FleschKincaid(100, 10, 150), 2);

    [Theory]
    // words/smog-formula, index.js at 01eeb43.
    [InlineData(30, 9, 6.258)]
    [InlineData(10, 5, 7.169)]
    public void Smog_gives_the_worked_values(double sentences, double polysyllables, double grade) =>
        Assert.Equal(grade, Readability.Smog(sentences, polysyllables), 3);

    [Theory]
    // Syllables as a dictionary of English divides the words.
    [InlineData("paper", 2)]
    [InlineData("centimetres", 4)]
    [InlineData("therapist", 3)]
    [InlineData("wipe", 1)]
    [InlineData("wipes", 1)]
    [InlineData("needle", 2)]
    [InlineData("emergency", 4)]
    [InlineData("someone", 2)]
    [InlineData("covered", 2)]
    [InlineData("washed", 1)]
    [InlineData("folded", 2)]
    [InlineData("thermometer", 4)]
    [InlineData("gloves", 1)]
    [InlineData("doctor", 2)]
    [InlineData("bruise", 1)]
    [InlineData("pieces", 2)]
    [InlineData("28", 3)]
    [InlineData("100", 3)]
    public void Syllables_are_counted_as_a_dictionary_divides(string word, int syllables) => Assert.Equal(syllables, Readability.Syllables(word));

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void Sheets_stay_within_the_fifth_grade(string name) => Check(name, Papers.About(name));

    [Fact]
    public void Sheets_of_simulated_people_stay_within_the_fifth_grade()
    {
        for (int i = 0; i < Simulated; i++)
        {
            Check($"simulated {i}", Papers.Simulated(i));
        }
    }

    private void Check(string name, Case about)
    {
        foreach (bool toHelper in (bool[])[false, true])
        {
            foreach (string language in English.Tags)
            {
                string text = Running(Papers.Text(VisitDocuments.Sheet(about with { English = English.Of(language, about.Words) }, toHelper)));
                var (grade, smog) = Readability.Of(text);
                output.WriteLine($"{name}, {(toHelper ? "helper" : "person")}, {language}: Flesch-Kincaid {grade:0.00}, SMOG {smog:0.00}");
                Assert.InRange(grade, -3, MostGrade);
                Assert.InRange(smog, 3, MostSmog);

                // Short sentences must not hide a long one.
                Assert.All(Readability.Sentences(text), s => Assert.True(Readability.Words(s) <= MostWords, $"{name}: {Readability.Words(s)} words, {s}"));
            }
        }
    }

    [Fact]
    public void Every_caution_in_plain_words_stays_within_the_fifth_grade_by_itself()
    {
        var hands = BuiltIn.Rules().All.Where(r => r.Helped is not null).Select(r => new PlainRule(r.Id, r.Helped!.Person, r.Helped.Helper));
        foreach (var rule in PlainRules.Load().Rules.Concat(hands))
        {
            foreach (string text in ((string?[])[rule.Person, rule.Helper]).OfType<string>())
            {
                double grade = Readability.Of(text.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal)).FleschKincaid;
                Assert.True(grade <= MostGrade, $"{rule.Id}: {grade:0.0}, {text}");
            }
        }
    }

    [Fact]
    public void Every_stop_and_caution_has_plain_words_and_fills_no_other_slots()
    {
        var plain = PlainRules.Load().Rules;
        var rules = BuiltIn.Rules().All.Where(r => r.Kind != RuleKind.RulesOut).ToList();

        Assert.Equal(rules.Select(r => r.Id).Order(StringComparer.Ordinal), plain.Select(p => p.Id).Order(StringComparer.Ordinal));
        foreach (var p in plain)
        {
            string clinical = rules.Single(r => r.Id == p.Id).Text;
            Assert.All(Slots(p.Person).Concat(Slots(p.Helper ?? string.Empty)), slot => Assert.Contains(slot, clinical, StringComparison.Ordinal));
        }
    }

    private static IEnumerable<string> Slots(string text) =>
        System.Text.RegularExpressions.Regex.Matches(text, @"\{[a-z]+\}", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)).Select(m => m.Value);

    /// <summary>Sentences only: headings, lines to fill in and step numbers would flatter the grade.</summary>
    private static string Running(string text) => string.Join('\n', text.Split('\n')
        .Where(l => l.EndsWith('.'))
        .Select(l => System.Text.RegularExpressions.Regex.Replace(l, @"^\d+\. ", "", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1))));
}
