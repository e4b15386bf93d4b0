using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.Protection;
using ToiletAid.App.Stock;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Text that comes from outside: one rule for what may be in it, and names for what it is instead of UTF-8.</summary>
public sealed class TextRuleTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("name")]
    [InlineData("summary")]
    [InlineData("source")]
    public void An_escape_or_a_mark_of_direction_in_a_clinics_file_is_refused(string member)
    {
        string stock = Cli.Run("", "aids", "--format", "json").Output;
        foreach (string bad in (string[])[@"\u001b[2J", @"\u202e", @"\u009b", @"\u0000"])
        {
            string start = $"\"{member}\": \"";
            int at = stock.IndexOf(start, StringComparison.Ordinal) + start.Length;
            Assert.True(at >= start.Length);

            var read = new StockReader(BuiltIn.Aids()).Read(Encoding.UTF8.GetBytes(stock.Insert(at, bad)));

            Assert.Contains(read.Issues, i => i.Message.Contains("cannot be read aloud", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_name_of_a_file_is_not_obeyed_by_the_terminal()
    {
        string picture = _folder.File("change.svg"), stock = _folder.File("stock\u001b\u202e.json", Cli.Run("", "aids", "--format", "json").Output);

        Assert.Equal(0, Cli.Run(People(), "whatif", "-", "--change", $"aids={stock}", "--quiet", "--draws", "2", "--samples", "10", "--picture", picture).Code);

        string svg = File.ReadAllText(picture);
        Assert.DoesNotContain('\u001b', svg);
        Assert.DoesNotContain('\u202e', svg);
        _ = System.Xml.Linq.XDocument.Parse(svg);
        Assert.Equal("a?b", ReadableText.Shown("a\u001bb"));
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    public void Utf_16_is_named(string form)
    {
        var encoding = Encoding.GetEncoding(form);
        string profile = File.ReadAllText(Repository.Path("profiles", "k-014-stiff-shoulder.json"));
        foreach (byte[] bytes in (byte[][])[[.. encoding.GetPreamble(), .. encoding.GetBytes(profile)], encoding.GetBytes(profile)])
        {
            File.WriteAllBytes(_folder.File("K-014.json"), bytes);
            Assert.Contains("it is UTF-16, save it as UTF-8", Cli.Run("", "rank", _folder.File("K-014.json")).Error, StringComparison.Ordinal);
            Assert.Contains("it is UTF-16, save it as UTF-8", Cli.Run("", "aids", "check", _folder.File("K-014.json")).Error, StringComparison.Ordinal);
            Assert.Equal(3, Cli.Run("", "report", Repository.Path("profiles", "k-014-stiff-shoulder.json"), "--out", _folder.File("K-014.json")).Code);
            Assert.Equal(bytes, File.ReadAllBytes(_folder.File("K-014.json")));
        }

        File.WriteAllBytes(_folder.File("secret"), [.. encoding.GetPreamble(), .. encoding.GetBytes("four quiet otters swim\n")]);
        Assert.Contains("secret is UTF-16. Save it as UTF-8.", Cli.Run("", "protect", Saved(), "--passphrase-file", _folder.File("secret")).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vier fr\u00f6hliche \u00f6tter", "vier fro\u0308hliche o\u0308tter")]
    [InlineData("b\u1ed1n con r\u00e1i c\u00e1", "bo\u0302\u0301n con ra\u0301i ca\u0301")]
    public void A_passphrase_opens_in_either_form_of_its_letters_and_behind_a_mark(string one, string other)
    {
        string path = Saved();
        Assert.Equal(0, Cli.Run("", "protect", path, "--passphrase-file", _folder.File("one", one + "\n")).Code);

        Assert.Equal(0, Cli.Run("", "rank", path, "--passphrase-file", _folder.File("other", other + "\n")).Code);
        Assert.Equal(0, Cli.Run("", "rank", path, "--passphrase-file", _folder.File("mark", "\uFEFF" + other + "\n")).Code);
        Assert.Equal(3, Cli.Run("", "rank", path, "--passphrase-file", _folder.File("wrong", "vier tr\u00fcbe \u00f6tter\n")).Code);
    }

    [Fact]
    public void Letters_are_put_together_and_taken_apart_as_another_library_does()
    {
        OutsideTool.Needs(OutsideTool.Exists("python3"), "python3");
        const string letters = "\u00e9\u00f6\u00c5\u0151\u0219\u1ed1\u1eb7\u03ac\u0439\u00f1\u0117";
        string Ask(string form) => OutsideTool.Run("python3", "", "-c", $"import unicodedata,sys; sys.stdout.buffer.write(unicodedata.normalize('{form}','{letters}').encode())").Output;

        Assert.Equal(Ask("NFD"), LetterForms.Decomposed(letters));
        Assert.Equal(Ask("NFC"), LetterForms.Composed(LetterForms.Decomposed(letters)));
        Assert.Equal(["abc"], LetterForms.Of("abc"));
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("-K1")]
    [InlineData("12")]
    [InlineData("1-2")]
    [InlineData("1E5")]
    [InlineData("12e-3")]
    public void A_code_that_a_spreadsheet_takes_for_something_else_is_refused(string code)
    {
        Assert.Contains("taken for a number or a formula", PersonCode.Fault(code)!, StringComparison.Ordinal);
        Assert.DoesNotMatch(SchemaPattern(), code);
    }

    [Theory]
    [InlineData("K-014")]
    [InlineData("E5")]
    [InlineData("014-K")]
    public void Other_codes_are_taken(string code)
    {
        Assert.Null(PersonCode.Fault(code));
        Assert.Matches(SchemaPattern(), code);
    }

    [Fact]
    public void To_resume_past_the_end_is_told()
    {
        var (code, output, error) = Cli.Run(People(), "rank", "-", "--resume", "50", "--format", "ndjson");

        Assert.Equal((2, ""), (code, output));
        Assert.Equal("--resume 50 is past the end: there are 2 profiles. Nothing was done.\n", error);
        Assert.Equal(0, Cli.Run(People(), "rank", "-", "--resume", "2", "--format", "ndjson").Code);
    }

    [Theory]
    [InlineData("maybe\nyes\n", true)]
    [InlineData("yesterday\nno\n", false)]
    [InlineData("\n\nY\n", true)]
    [InlineData("nonsense\n", false)]
    public void Neither_yes_nor_no_is_taken_for_granted(string typed, bool expected)
    {
        using var output = new StringWriter { NewLine = "\n" };

        bool said = new ToiletAidTui.Host.SpeechLines(output, 0).AskYes("Erase it?", new(new MemoryStream(Encoding.UTF8.GetBytes(typed))));

        Assert.Equal(expected, said);
        Assert.Contains("Type yes or no.\n", output.ToString(), StringComparison.Ordinal);
    }

    private static string People() => Cli.Run("", "simulate", "--people", "2", "--depth", "quick").Output;

    private static string SchemaPattern()
    {
        using var schema = System.Text.Json.JsonDocument.Parse(ProfileSchema.Of(BuiltIn.Questions()));
        return schema.RootElement.GetProperty("properties").GetProperty("person").GetProperty("pattern").GetString()!;
    }

    private string Saved()
    {
        string path = _folder.File("S-1.json");
        new ProfileStore(BuiltIn.Questions()).Add(path, "S-1", NumberedVisit.Session(0), seen: null);
        return path;
    }
}
