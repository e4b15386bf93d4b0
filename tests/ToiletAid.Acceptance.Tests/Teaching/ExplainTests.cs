using System.Text.RegularExpressions;
using ToiletAid.Acceptance.Tests.Documents;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Teaching;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Acceptance.Tests.Teaching;

public sealed partial class ExplainTests(ITestOutputHelper output)
{
    /// <summary>Patient education is asked to be at the sixth grade at most (American Medical Association, as quoted in J Med Libr Assoc 2018, 106:262).</summary>
    private const double MostGrade = 6;

    /// <summary>A decision of this project: what is still kept in mind when it is heard once.</summary>
    private const int MostWords = 25;

    private static readonly KnowledgeBase Knowledge = BuiltIn.Knowledge();
    private static readonly string StiffShoulder = DemoPeople.File("k-014-stiff-shoulder");

    public static TheoryData<string> Kinds => [.. Knowledge.Catalogue.Aids.Select(a => a.Id)];

    [Fact]
    public void Two_kinds_side_by_side_are_read_out() => Golden.Match(Said("explain", "tongs", "spray-wash"), "tongs.spray-wash.txt");

    /// <summary>A reader that says what changed on the screen leaves a line out that stood there before, such as a caution of the kind before.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_line_is_written_twice(string kind)
    {
        string[] others = [.. Knowledge.Catalogue.Aids.Select(a => a.Id).Where(i => i != kind)];
        foreach (string[] side in others.Select(o => (string[])[kind, o]).Append([kind, .. others[..3]]))
        {
            string[] lines = [.. Said(["explain", .. side]).Split('\n').Where(l => l.Length > 0)];
            Assert.Equal(lines.Distinct(StringComparer.Ordinal), lines);
        }
    }

    [Fact]
    public void What_they_mean_for_a_person_comes_first() =>
        Golden.Match(Said("explain", "short-soft", "by-hand", StiffShoulder), "k-014-stiff-shoulder.txt");

    /// <summary>One sentence for each kind, and the same places as in the ranking.</summary>
    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void What_a_kind_means_for_a_person_is_what_the_ranking_says(string name)
    {
        var answers = new ProfileFile(Knowledge.Questions).Read(DemoPeople.File(name)).Value!.Latest.Answers;
        var advice = new Advisor(Knowledge, new()).Advise(answers);
        string[] ids = [.. Knowledge.Catalogue.Aids.Select(a => a.Id)];
        string[] lines = [.. ids.Chunk(4).SelectMany(c => Said(["explain", .. c, DemoPeople.File(name)]).Split("\n\n")[1].Split('\n').Skip(1))];
        if (!advice.Stops.IsEmpty)
        {
            Assert.All(lines, l => Assert.DoesNotContain("place", l, StringComparison.Ordinal));
            Assert.All(lines.Where(l => l.Length > 0), l => Assert.EndsWith("Do not try an aid today.", l, StringComparison.Ordinal));
            Assert.DoesNotContain("For whom it is good", Said("explain", "tongs", DemoPeople.File(name)), StringComparison.Ordinal);
            return;
        }

        Assert.Equal(ids.Length, lines.Length);
        foreach (var (id, line) in ids.Zip(lines))
        {
            int place = advice.Ranked.FirstOrDefault(r => r.Plan.Aid.Id == id)?.Rank ?? 0;
            Assert.Contains(place switch { 0 => " is ruled out for this person: ", 1 => " comes first for this person, ", _ => $" is in place {place} of {advice.Ranked.Length}, " }, line, StringComparison.Ordinal);
            Assert.Single(SentenceEnd().Matches(line));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void It_reads_at_the_sixth_grade_or_below(string kind)
    {
        string text = string.Join('\n', Said("explain", kind).Split('\n').Where(l => l.EndsWith('.')));
        double grade = Readability.Of(text).FleschKincaid;
        string longest = Readability.Sentences(text).MaxBy(Readability.Words)!;
        output.WriteLine($"{kind}: grade {grade:0.00}, longest sentence {Readability.Words(longest)} words: {longest.Trim()}");
        Assert.InRange(grade, 0, MostGrade);
        Assert.InRange(Readability.Words(longest), 1, MostWords);
    }

    /// <summary>A table is not heard as one: each cell is a sentence with its subject.</summary>
    [Fact]
    public void Every_feature_of_every_kind_is_a_sentence_that_names_it()
    {
        string text = Said("explain", "long-clamp", "hose-wash", "seat-wash-dry", "helper-wipe");
        string[] features = [.. text.Split("What the design means\n")[1].Split("\n\n")[0].Split('\n').Where(l => l.Length > 0)];

        Assert.DoesNotContain("|", text, StringComparison.Ordinal);
        Assert.Equal(0, features.Length % 5);
        foreach (string[] feature in features.Chunk(5))
        {
            Assert.All(feature.Skip(1).Zip(["The long handle ", "The hose ", "The wash-and-dry seat ", "Help from a person "]), p => Assert.StartsWith(p.Second, p.First, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_feature_follows_its_attribute()
    {
        var tongs = Knowledge.Catalogue.Aids.Single(a => a.Id == "tongs");
        static Sourced Metres(double x) => new(x, x, x, Basis.Measured, "test");
        string[] Says(Aid aid) => [.. new KindFeatures(Knowledge.Evidence).Of([aid]).SelectMany(r => r.Says)];

        Assert.Contains("is about 33 centimetres long from grip to head, from 33 to 33.", Says(tongs with { Length = Metres(0.33) }));
        Assert.Contains("has a soft head, 6 centimetres wide. That is wide for a cleft.", Says(tongs with { Tip = Tip.Soft, TipWidth = Metres(0.06) }));
        Assert.Contains("is straight.", Says(tongs with { Shape = AidShape.Straight }));
        Assert.Contains("folds or comes apart to 12 centimetres and weighs 80 grams.", Says(tongs with { FoldedLength = Metres(0.12) }));
        Assert.Contains("stays at the toilet.", Says(tongs with { FoldedLength = null }));
        Assert.Contains(Says(tongs with { SoilTouched = Metres(0.9) }), s => s.EndsWith("The hand touches used paper.", StringComparison.Ordinal));
    }

    [Fact]
    public void Html_has_the_shapes_with_words_and_a_table_with_headers()
    {
        string html = Said("explain", "tongs", "short-soft", "--format", "html");

        Assert.Equal(2, SvgImage().Count(html));
        Assert.Contains("<th scope=\"col\">The soft holder</th>", html, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">Letting go</th>", html, StringComparison.Ordinal);
        Assert.Contains("| Feature | What it means | The pair of tongs | The soft holder |\n| --- | --- | --- | --- |\n", Said("explain", "tongs", "short-soft", "--format", "markdown"), StringComparison.Ordinal);
    }

    [Fact]
    public void American_English_has_its_own_words_and_both_units()
    {
        string text = Said("explain", "tongs", "--language", "en-US");

        Assert.Contains("about 21 centimeters (8.3 inches) long", text, StringComparison.Ordinal);
        Assert.Contains("first practice", text, StringComparison.Ordinal);
        Assert.DoesNotContain("centimetre", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tongz is not a kind of aid, use one of by-hand, ", "tongz")]
    [InlineData("tongz is not a kind of aid, use one of by-hand, ", "tongz", "tongs")]
    [InlineData("tongz is neither a kind of aid nor a profile, use a file, a code or by-hand, ", "tongs", "tongz")]
    [InlineData("A kind is named twice, name each once.", "tongs", "tongs")]
    [InlineData("5 kinds are too many to hear beside each other, name at most 4.", "tongs", "by-hand", "hose-wash", "seat-wash", "long-clamp")]
    [InlineData("7 kinds are too many to hear beside each other, name at most 4.", "tongs", "by-hand", "hose-wash", "seat-wash", "long-clamp", "wipe-moist", "helper-wipe")]
    public void What_cannot_be_explained_is_refused_in_one_sentence(string sentence, params string[] words)
    {
        var (code, said, error) = Cli.Run("", ["explain", .. words]);

        Assert.Equal((2, ""), (code, said));
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void A_profile_that_is_not_there_is_refused_as_everywhere() =>
        Assert.Equal(Cli.Run("", "why", "nobody.json").Error, Cli.Run("", "explain", "tongs", "nobody.json").Error);

    [Fact]
    public void A_kind_of_the_clinics_own_is_explained_from_its_attributes_alone()
    {
        using var folder = new TempFolder();
        string own = KnowledgeOf("tongs").Replace("\"tongs\"", "\"our-tongs\"", StringComparison.Ordinal).Replace("Toilet-paper tongs", "Our blue tongs", StringComparison.Ordinal);
        string stock = folder.File("stock.json", $"{{\"format\": 1, \"aids\": [{own}], \"addOns\": []}}");
        string text = Said("explain", "our-tongs", "--aids", stock);

        Assert.Contains("Nothing was counted for the our blue tongs: it is the clinic's own.", text, StringComparison.Ordinal);
        Assert.Contains("It would rub skin that must not be rubbed.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("came first for", text, StringComparison.Ordinal);
    }

    private static string KnowledgeOf(string aid)
    {
        using var all = System.Text.Json.JsonDocument.Parse(Cli.Run("", "aids", "--format", "json").Output);
        return all.RootElement.GetProperty("aids").EnumerateArray().Single(a => a.GetProperty("id").GetString() == aid).GetRawText();
    }

    private static string Said(params string[] words)
    {
        var (code, said, error) = Cli.Run("", words);
        Assert.Equal((0, ""), (code, error));
        return said;
    }

    [GeneratedRegex(@"\.(\s|$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("<svg [^>]*role=\"img\" aria-label=\"[^\"]{40,}\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SvgImage();
}
