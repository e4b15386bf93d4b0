using System.Collections.Immutable;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.VisitNotes;

/// <summary>The free note of a visit: typed line by line, kept with the answers, printed in the note and nowhere counted.</summary>
public sealed class NoteTests : IDisposable
{
    private const string Odd = "1. <b>Reaches</b> 30 cm *left* & not right | \"fine\", colour grey";

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_note_is_taken_at_any_question_in_one_line_or_in_several()
    {
        string file = _folder.File("k-1.json");
        string typed = "note Prefers the left side\nnone\nnote\nSister helps on Sundays\nWrong line\nerase\nlist\n\nlist\nquit\n";

        var (code, output, error) = Cli.Run(typed, "assess", "--linear", "--save", file, "--person", "K-1", "--date", "2026-03-09");

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(["Prefers the left side", "Sister helps on Sundays"], Sessions(file).Single().Note);
        Assert.Single(Sessions(file).Single().Answers.Ids);
        Assert.Contains("Line 1 is kept.\n", output, StringComparison.Ordinal);
        Assert.Contains("Line 3 is removed.\n", output, StringComparison.Ordinal);
        Assert.Contains("Note, line 2. Sister helps on Sundays\n", output, StringComparison.Ordinal);
        Assert.Contains("note", Cli.Run("help\nquit\n", "assess", "--linear").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\u001b[2J", "Error: The line has a character that cannot be read aloud or printed, write it without.")]
    [InlineData("left \u202e right", "Error: The line has a character that cannot be read aloud or printed, write it without.")]
    public void A_character_that_a_terminal_would_obey_is_refused_in_a_sentence_and_nothing_is_lost(string line, string sentence)
    {
        string file = _folder.File("k-1.json");

        var (code, output, _) = Cli.Run($"note Before\nnote {line}\nnote\n{line}\n\nnone\nquit\n", "assess", "--linear", "--save", file, "--person", "K-1");

        Assert.Equal(0, code);
        Assert.Equal(2, output.Split(sentence).Length - 1);
        Assert.Contains("Not noted. Numbers, or none: ", output, StringComparison.Ordinal);
        Assert.Contains("Not taken. Note, line 2: ", output, StringComparison.Ordinal);
        Assert.Equal(["Before"], Sessions(file).Single().Note);
    }

    [Fact]
    public void The_limits_are_told_and_hold()
    {
        string file = _folder.File("k-1.json");
        string lines = string.Join('\n', Enumerable.Range(1, NoteLine.Most + 1).Select(i => $"note Line number {i}"));

        var (_, output, _) = Cli.Run($"note {new string('a', NoteLine.Longest + 1)}\n{lines}\nnone\nquit\n", "assess", "--linear", "--save", file, "--person", "K-1");

        Assert.Contains("Error: The line has 301 characters, at most 300 are taken, write it in two lines.", output, StringComparison.Ordinal);
        Assert.Contains("Error: A note has at most 20 lines, so no more can be added.", output, StringComparison.Ordinal);
        Assert.Equal(NoteLine.Most, Sessions(file).Single().Note.Length);
    }

    [Theory]
    [InlineData("[\"Prefers the left side\",\"Größe 38\"]", true)]
    [InlineData("[]", true)]
    [InlineData("[\"\"]", false)]
    [InlineData("[\"   \"]", false)]
    [InlineData("[\"two\\nlines\"]", false)]
    [InlineData("[\"ends so\\n\"]", false)]
    [InlineData("[\"\\u001b[2J\"]", false)]
    [InlineData("[\"turned \\u202e round\"]", false)]
    [InlineData("[\"a\\u200bb\"]", false)]
    [InlineData("[7]", false)]
    [InlineData("\"not a list\"", false)]
    public void A_note_in_a_file_is_checked_by_reader_and_schema_alike(string note, bool good) => Alike(note, good);

    [Fact]
    public void Too_many_and_too_long_lines_are_refused_by_reader_and_schema_alike()
    {
        Alike($"[\"{new string('a', NoteLine.Longest)}\"]", good: true);
        Alike($"[\"{new string('a', NoteLine.Longest + 1)}\"]", good: false);
        Alike($"[{string.Join(',', Enumerable.Repeat("\"line\"", NoteLine.Most))}]", good: true);
        Alike($"[{string.Join(',', Enumerable.Repeat("\"line\"", NoteLine.Most + 1))}]", good: false);
    }

    [Fact]
    public void The_clinic_note_and_the_record_have_the_words_as_they_were_typed()
    {
        string file = Noted("k-014-stiff-shoulder", Odd);

        foreach (string language in (string[])["en-GB", "en-US"])
        {
            Assert.Contains($"\nTherapist's notes\n{Odd}\n", Cli.Run("", "report", file, "--language", language).Output, StringComparison.Ordinal);
        }

        Assert.Contains("<ul>\n<li>1. &lt;b&gt;Reaches&lt;/b&gt; 30 cm *left* &amp; not right | &quot;fine&quot;, colour grey</li>\n</ul>", Cli.Run("", "report", file, "--format", "html").Output, StringComparison.Ordinal);
        Assert.Contains("\n- 1\\. \\<b\\>Reaches\\</b\\> 30 cm \\*left\\* \\& not right \\| \"fine\", colour grey\n", Cli.Run("", "report", file, "--format", "markdown").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Reaches", Cli.Run("", "report", file, "--kind", "sheet").Output + Cli.Run("", "rank", file).Output, StringComparison.Ordinal);
        using var record = JsonDocument.Parse(Cli.Run("", "report", file, "--kind", "record").Output);
        var noted = record.RootElement.GetProperty("entry").EnumerateArray().Select(e => e.GetProperty("resource"))
            .Single(r => r.GetProperty("resourceType").GetString() == "Observation" && r.GetProperty("code").GetProperty("text").GetString() == "Note of the therapist");
        Assert.Equal((Odd, "2026-03-09"), (noted.GetProperty("valueString").GetString(), noted.GetProperty("effectiveDateTime").GetString()));
    }

    [Fact]
    public void A_red_flag_keeps_the_note_in_the_clinic_note() =>
        Assert.Contains("\nTherapist's notes\nCalled the ward at ten\n", Cli.Run("", "report", Noted("w-701-red-flag", "Called the ward at ten")).Output, StringComparison.Ordinal);

    [Fact]
    [Trait("Speed", "Slow")]
    public void A_note_changes_no_ranking_and_is_no_change_between_visits()
    {
        string bare = Path.Combine(DemoPeople.Folder, "visits", "g-226-sore-hands.json"), noted = _folder.File("g-226.json");
        var store = new ProfileStore(BuiltIn.Questions());
        File.Copy(bare, noted);
        var profile = store.Open(noted).Value!;
        var day = profile.Profile.Sessions[^1].Date.AddDays(3);
        Assert.NotNull(store.Add(noted, profile.Profile.Person, new(day, profile.Profile.Latest.Depth, Answers.None) { Note = ["Rang, all well"] }, profile).Value);

        Assert.Equal(Cli.Run("", "rank", bare).Output, Cli.Run("", "rank", noted).Output);
        Assert.Equal(Cli.Run("", "compare", bare).Output, Cli.Run("", "compare", noted).Output);
        Assert.Contains("\nTherapist's notes\nNoted on ", Cli.Run("", "report", noted).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_that_note_different_things_on_one_day_lose_neither()
    {
        var store = new ProfileStore(BuiltIn.Questions());
        string file = _folder.File("k-2.json");
        var opened = store.Add(file, "K-2", new(new(2026, 3, 9), Core.Person.Depth.Quick, Answers.None) { Note = ["First"] }, null).Value!.Stored;

        store.Add(file, "K-2", new(new(2026, 3, 9), Core.Person.Depth.Quick, Answers.None) { Note = ["Second"] }, opened);
        var last = store.Add(file, "K-2", new(new(2026, 3, 9), Core.Person.Depth.Quick, Answers.None) { Note = ["Third"] }, opened);

        Assert.Single(last.Value!.AddedElsewhere);
        Assert.Equal(["First", "Second", "Third"], Sessions(file).SelectMany(s => s.Note));
    }

    [Fact]
    public void A_protected_profile_hides_the_note_gives_it_back_and_erasing_leaves_nothing_of_it()
    {
        string file = Noted("k-014-stiff-shoulder", "Prefers the left side"), pass = _folder.File("pass", "four quiet otters swim\n");
        Assert.Equal(0, Cli.Run("", "protect", file, "--passphrase-file", pass).Code);
        Assert.All(Directory.GetFiles(_folder.Path), f => Assert.DoesNotContain("left side", File.ReadAllText(f), StringComparison.Ordinal));
        Assert.Contains("Prefers the left side", Cli.Run("", "report", file, "--passphrase-file", pass).Output, StringComparison.Ordinal);
        Assert.Equal(0, Cli.Run("", "unprotect", file, "--passphrase-file", pass).Code);
        Assert.Equal(["Prefers the left side"], Sessions(file).Single().Note);
        using (var journal = AnswerJournal.Start(file, BuiltIn.Questions(), passphrase: null))
        {
            journal.Save(Sessions(file).Single());
        }

        Assert.Equal(["Prefers the left side"], AnswerJournal.Read(Assert.Single(AnswerJournal.Left(file)), BuiltIn.Questions(), null).Value!.Latest.Note);
        Assert.Equal(0, Cli.Run("K-014\n", "erase", file, "--yes").Code);
        Assert.All(Directory.GetFiles(_folder.Path), f => Assert.DoesNotContain("left side", File.ReadAllText(f), StringComparison.Ordinal));
    }

    private static void Alike(string note, bool good)
    {
        string profile = $$"""{"format":1,"person":"K-014","sessions":[{"date":"2026-03-09","depth":"quick","answers":{},"note":{{note}}}]}""";
        var read = new ProfileReader(BuiltIn.Questions()).Read(System.Text.Encoding.UTF8.GetBytes(profile));
        using var document = JsonDocument.Parse(profile);

        Assert.Equal(good, read.Value is not null);
        Assert.Equal(good, Json.Schema.JsonSchema.FromText(File.ReadAllText(Repository.Path("profiles", "schema", "profile.schema.json"))).Evaluate(document.RootElement).IsValid);
        Assert.All(read.Issues, i => Assert.StartsWith("sessions[0].note", i.Place, StringComparison.Ordinal));
    }

    private static ImmutableArray<Session> Sessions(string file) => new ProfileFile(BuiltIn.Questions()).Read(file).Value!.Sessions;

    /// <summary>A demo person whose one visit has a note.</summary>
    private string Noted(string person, string line)
    {
        var profile = new ProfileFile(BuiltIn.Questions()).Read(DemoPeople.File(person)).Value!;
        string file = _folder.File(person + ".json");
        new ProfileFile(BuiltIn.Questions()).Write(profile with { Sessions = [profile.Latest with { Note = [line] }] }, file);
        return file;
    }
}
