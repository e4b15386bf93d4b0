using System.Text.RegularExpressions;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.App.Pictures;

namespace ToiletAid.Acceptance.Tests.Documents;

public sealed partial class PaperTests
{
    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void Notes_and_sheets_read_as_approved(string name)
    {
        // The hash changes with every number of the knowledge, and says so by itself.
        Golden.Match(Hash().Replace(Papers.Text(name, "note"), "knowledge (hash)"), name + ".note.txt");
        Golden.Match(Papers.Text(name, "person"), name + ".person.txt");
        Golden.Match(Papers.Text(name, "helper"), name + ".helper.txt");
    }

    [Theory]
    [InlineData("note", "note")]
    [InlineData("person", "sheet")]
    [InlineData("helper", "sheet", "--for", "helper")]
    public void The_program_writes_the_papers_that_are_approved(string kind, params string[] options) =>
        Assert.Equal(Papers.Text("m-207-one-hand", kind), Cli.Run("", ["report", DemoPeople.File("m-207-one-hand"), "--kind", .. options]).Output);

    [Fact]
    public void Markup_and_American_English_read_as_approved()
    {
        string path = DemoPeople.File("k-014-stiff-shoulder");

        Golden.Match(Cli.Run("", "report", path, "--kind", "sheet", "--format", "html").Output, "k-014-stiff-shoulder.person.html");
        Golden.Match(Cli.Run("", "report", path, "--kind", "sheet", "--format", "markdown").Output, "k-014-stiff-shoulder.person.md");
        Golden.Match(Hash().Replace(Cli.Run("", "report", path, "--kind", "note", "--language", "en-US").Output, "knowledge (hash)"), "k-014-stiff-shoulder.note.en-us.txt");
    }

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void Every_caution_of_the_advice_stands_in_every_paper(string name)
    {
        var about = Papers.About(name);
        string note = Papers.Text(name, "note"), person = Papers.Text(name, "person"), helper = Papers.Text(name, "helper");
        foreach (var finding in about.Advice.Stops.Concat(about.Chosen?.Cautions ?? []))
        {
            Assert.Contains(App.Wording.AdviceText.Sentence(finding), note, StringComparison.Ordinal);
            Assert.Contains(PlainRules.Of(finding, toHelper: false), person, StringComparison.Ordinal);
            Assert.Contains(PlainRules.Of(finding, toHelper: true), helper, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void A_note_has_one_drawing_of_posture_way_and_aid(string name)
    {
        var drawn = Papers.Of(name, "note").Blocks.OfType<Block.Steps>().SelectMany(s => s.Drawings).OfType<Drawing>().ToList();

        Assert.Equal(Papers.About(name).Chosen is null ? 0 : 1, drawn.Count);
        Assert.All(drawn, d => Assert.Contains("data-picture=\"way\"", d.Shapes, StringComparison.Ordinal));
    }

    [Fact]
    public void A_sheet_is_in_words_or_in_large_pictures_by_the_answers_or_as_asked_for()
    {
        string Sheet(string name, params string[] options) => Cli.Run("", ["report", DemoPeople.File(name), "--kind", "sheet", "--format", "html", .. options]).Output;

        Assert.Contains("<ol class=\"seen\">", Sheet("d-841-forgets-steps"), StringComparison.Ordinal);
        Assert.DoesNotContain("<ol class=\"seen\">", Sheet("d-841-forgets-steps", "--sheet", "words"), StringComparison.Ordinal);
        Assert.DoesNotContain("<ol class=\"seen\">", Sheet("d-841-forgets-steps", "--for", "helper"), StringComparison.Ordinal);
        Assert.DoesNotContain("<ol class=\"seen\">", Sheet("k-014-stiff-shoulder"), StringComparison.Ordinal);
        Assert.Contains("<ol class=\"seen\">", Sheet("k-014-stiff-shoulder", "--sheet", "pictures"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_red_flag_leaves_no_plan_and_no_steps_in_any_paper()
    {
        foreach (string[] kind in (string[][])[["note"], ["sheet", "--for", "person"], ["sheet", "--for", "helper"]])
        {
            string text = Cli.Run("", ["report", DemoPeople.File("w-701-red-flag"), "--kind", .. kind]).Output;

            Assert.Contains("emergency", text, StringComparison.Ordinal);
            Assert.DoesNotContain("\n1. ", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Place 1", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Another_place_of_the_shortlist_can_be_written_up_and_asks_for_the_reason()
    {
        string text = Cli.Run("", "report", DemoPeople.File("k-014-stiff-shoulder"), "--kind", "note", "--plan", "2").Output;

        Assert.Contains("The therapist chose place 2 on the shortlist.", text, StringComparison.Ordinal);
        Assert.Contains("Reason for not choosing place 1: ____", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no plan in place 40, look at the shortlist with toiletaid rank.", "--plan", "40")]
    [InlineData("There is no plan in place 0, look at the shortlist with toiletaid rank.", "--plan", "0")]
    [InlineData("--sheet is for the person's sheet, use --kind sheet without --for helper.", "--sheet", "pictures")]
    [InlineData("--sheet is for the person's sheet, use --kind sheet without --for helper.", "--kind", "sheet", "--for", "helper", "--sheet", "words")]
    [InlineData("A note does not come as json, use text, markdown or html.", "--format", "json")]
    public void What_cannot_be_written_is_told(string sentence, params string[] options)
    {
        var (code, output, error) = Cli.Run("", ["report", DemoPeople.File("k-014-stiff-shoulder"), .. options]);

        Assert.Equal((2, "", sentence), (code, output, error.TrimEnd()));
    }

    [Fact]
    public void A_file_is_written_whole_for_its_owner_only()
    {
        using var folder = new TempFolder();
        string path = folder.File("note.txt", "old");

        var (code, output, _) = Cli.Run("", "report", DemoPeople.File("k-014-stiff-shoulder"), "--out", path);

        Assert.Equal((0, ""), (code, output));
        Assert.Equal(Cli.Run("", "report", DemoPeople.File("k-014-stiff-shoulder")).Output, File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFiles(folder.Path));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        }
    }

    [Fact]
    public void A_file_that_cannot_be_written_is_told()
    {
        var (code, _, error) = Cli.Run("", "report", DemoPeople.File("k-014-stiff-shoulder"), "--out", "/no/such/folder/note.txt");

        Assert.Equal((3, "/no/such/folder/note.txt could not be written, its folder does not exist.\n"), (code, error));
    }

    [Fact]
    public void Every_question_aid_and_add_on_has_words_for_the_papers()
    {
        var words = DocumentData.Load();
        var aids = BuiltIn.Aids();

        Assert.Equal(BuiltIn.Questions().All.Select(q => q.Id.Text).Order(StringComparer.Ordinal), words.Labels.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(aids.Aids.Select(a => a.Id).Order(StringComparer.Ordinal), words.Aids.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(aids.AddOns.Select(a => a.Id).Order(StringComparer.Ordinal), words.AddOns.Keys.Order(StringComparer.Ordinal));
        Assert.Subset(words.Labels.Keys.ToHashSet(), words.Icf.SelectMany(i => i.Questions).ToHashSet());
        Assert.Subset(words.Aids.Keys.ToHashSet(), words.Iso.SelectMany(i => i.Aids).ToHashSet());
    }

    [Fact]
    public void American_English_has_its_own_spelling_units_and_dates()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            string text = Papers.Text(name, "note", "en-US");
            Assert.Contains("March 9, 2026", text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\b(?i:centimetres?|millilitres?|diarrhoeal|haemorrhoids|colour|9 March)\b", text);
            Assert.DoesNotMatch(@"\d centimeters?\b(?! \()", text);
        }
    }

    [Theory]
    // 1 inch is 2.54 cm, 1 foot 12 inches, 1 pound 0.45359237 kg (1959); 1 lbf is 4.4482216 N; 38 Celsius is 100.4 Fahrenheit; 1 US fluid ounce is 29.5735 ml.
    [InlineData("It gives 38 centimetres.", "It gives 38 centimeters (15 inches).")]
    [InlineData("158 centimetres", "158 centimeters (5 feet 2 inches)")]
    [InlineData("182.5 centimetres", "182.5 centimeters (6 feet 0 inches)")]
    [InlineData("66 kilograms", "66 kilograms (145.5 pounds)")]
    [InlineData("9 kilograms-force", "9 kilograms-force")]
    [InlineData("20 newtons", "20 newtons (4.5 pounds-force)")]
    [InlineData("350 millilitres", "350 milliliters (11.8 fluid ounces)")]
    [InlineData("Never above 38 degrees Celsius.", "Never above 38 degrees Celsius (100 degrees Fahrenheit).")]
    [InlineData("60 and 12 degrees Celsius", "60 and 12 degrees Celsius (140 and 53 degrees Fahrenheit)")]
    [InlineData("Ring the doctor. Use a lidded bin.", "Call the doctor. Use a trash can with a lid.")]
    public void Metric_gets_its_other_unit_beside_it(string british, string american) =>
        Assert.Equal(american, English.Of("en-US", DocumentData.Load()).Say(british));

    [Fact]
    public void Html_holds_no_script_and_nothing_from_outside_and_escapes_what_it_is_given()
    {
        string html = HtmlDocument.Write(new("<b>&", "en-GB", LargePrint: true, [new Block.Paragraph("<script>x</script> & \"y\"")]));
        string sheet = Cli.Run("", "report", DemoPeople.File("k-014-stiff-shoulder"), "--kind", "sheet", "--format", "html").Output;

        Assert.Contains("&lt;script&gt;x&lt;/script&gt; &amp; &quot;y&quot;", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)<script|<link|<img|<iframe|url\\(|@import|https?:|\\son[a-z]+=", sheet);
        Assert.Contains("<html lang=\"en-GB\">", sheet, StringComparison.Ordinal);
    }

    [GeneratedRegex("knowledge [0-9a-f]{12}", RegexOptions.None, 10_000)]
    private static partial Regex Hash();
}
