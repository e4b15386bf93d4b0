using System.Text.Json;
using ToiletAid.App.Files;

namespace ToiletAid.Acceptance.Tests.Trials;

public sealed class TrialTests
{
    /// <summary>Plan, before, goal, dry try with level, minutes, effort, problems, real try with level, cleanliness, minutes, effort, problems.</summary>
    private const string Typed = "1\n3\n6\nyes\n6\n4\n2\nnone\nyes\n5\n2\n7\n4\n4 12\n";

    private static readonly string[] AllOptions =
    [
        "--date", "2026-03-16", "--plan", "1", "--before", "03", "--goal", "06", "--dry-level", "06", "--dry-minutes", "4", "--dry-effort", "2", "--dry-problems", "none",
        "--real-level", "05", "--real-cleanliness", "traces", "--real-minutes", "7", "--real-effort", "4", "--real-problems", "could-not-let-go,tired",
    ];

    [Fact]
    public void A_trial_line_by_line_reads_as_approved()
    {
        using var folder = new TempFolder();
        string input = Typed.Replace("1\n3\n6\n", "help\n9\n1\nhelp\n11\nback\n1\nrepeat\n3\n6\n", StringComparison.Ordinal);

        var (code, output, error) = Cli.Run(input, "trial", Copy(folder, "k-014-stiff-shoulder"), "--date", "2026-03-16");

        Assert.Equal((0, ""), (code, error));
        Golden.Match(output.Replace(folder.Path, "FOLDER", StringComparison.Ordinal), "line-by-line.txt");
    }

    [Fact]
    public void Options_alone_record_the_same_trial_without_a_question()
    {
        using var folder = new TempFolder();
        string typed = Copy(folder, "k-014-stiff-shoulder", "typed"), given = Copy(folder, "k-014-stiff-shoulder", "given");

        Cli.Run(Typed, "trial", typed, "--date", "2026-03-16");
        var (code, output, error) = Cli.Run("", ["trial", given, .. AllOptions]);

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(File.ReadAllText(typed), File.ReadAllText(given));
        Golden.Match(output.Replace(folder.Path, "FOLDER", StringComparison.Ordinal), "options.txt");
    }

    [Fact]
    public void The_next_ranking_uses_the_trial_and_says_so()
    {
        using var folder = new TempFolder();
        string file = Tried(folder);
        string first = First(DemoPeople.File("k-014-stiff-shoulder"));

        Assert.NotEqual(first, First(file));
        Assert.Contains("Tried on 2026-03-16: ", Cli.Run("", "why", file, "--aid", first).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_interview_of_the_person_uses_the_trial_too()
    {
        using var folder = new TempFolder();
        string file = Copy(folder, "k-014-stiff-shoulder", "tried"), untried = Copy(folder, "k-014-stiff-shoulder", "untried");
        string[] second = [.. AllOptions.Select((o, at) => at > 0 && AllOptions[at - 1] == "--plan" ? "2" : o)];
        Assert.Equal(0, Cli.Run("", ["trial", file, .. second]).Code);
        const string answers = "red-flags=none precautions=none conditions=none behind=outer-buttock front=groin lean=forward grasp=whole-hand\nfinish\nunknown\nunknown\nunknown\nunknown\n";

        string with = Cli.Run(answers, "assess", "--linear", "--save", file).Output, without = Cli.Run(answers, "assess", "--linear", "--save", untried).Output;

        Assert.NotEqual(without.Replace(untried, file, StringComparison.Ordinal), with);
        Assert.Equal(3, Sessions(file).GetArrayLength());
    }

    [Fact]
    public void The_visits_and_what_the_trial_moved_read_as_approved()
    {
        using var folder = new TempFolder();

        Golden.Match(Cli.Run("", "compare", Tried(folder)).Output, "compare.txt");
    }

    [Fact]
    public void The_note_has_the_trial_and_the_goal_as_approved()
    {
        using var folder = new TempFolder();
        string note = Cli.Run("", "report", Tried(folder)).Output;
        string Part(string from, string to) => note[(note.IndexOf($"\n{from}\n", StringComparison.Ordinal) + 1)..note.IndexOf($"\n{to}\n", StringComparison.Ordinal)];

        Golden.Match(string.Join('\n', Part("Trial", "Set-up"), Part("Review and goal", "Signature"), Part("Levels of help", "Codes")), "note.txt");
    }

    [Theory]
    [InlineData("--plan", "12", "The value of --plan is not taken.")]
    [InlineData("--before", "7b", "The value of --before is not taken.")]
    [InlineData("--dry-level", "11", "The value of --dry-level is not taken.")]
    [InlineData("--dry-minutes", "-3", "The value of --dry-minutes is not taken.")]
    [InlineData("--dry-minutes", "NaN", "The value of --dry-minutes is not taken.")]
    [InlineData("--dry-minutes", "-Infinity", "The value of --dry-minutes is not taken.")]
    [InlineData("--dry-effort", "11", "The value of --dry-effort is not taken.")]
    [InlineData("--real-cleanliness", "spotless", "The value of --real-cleanliness is not taken.")]
    [InlineData("--real-problems", "14", "The value of --real-problems is not taken.")]
    [InlineData("--date", "2026-02-01", "The last visit was on 2026-03-09")]
    [InlineData("--date", "yesterday", "The value of --date is not a date.")]
    public void An_option_that_makes_no_sense_is_refused_in_a_line_and_nothing_is_changed(string option, string value, string sentence)
    {
        using var folder = new TempFolder();
        string file = Copy(folder, "k-014-stiff-shoulder"), before = File.ReadAllText(file);
        string[] options = [.. AllOptions];
        options[Array.IndexOf(options, option) + 1] = value;

        var (code, _, error) = Cli.Run("", ["trial", file, .. options]);

        Assert.Equal(2, code);
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
        Assert.Equal(before, File.ReadAllText(file));
    }

    [Theory]
    [InlineData("1\n3\nquit\n", 0)]
    [InlineData("1\n3\n6\nyes\n", 3)]
    [InlineData("1\n3\n6\nno\nno\n", 0)]
    public void What_is_not_finished_is_not_saved(string input, int code)
    {
        using var folder = new TempFolder();
        string file = Copy(folder, "k-014-stiff-shoulder"), before = File.ReadAllText(file);

        var (got, output, error) = Cli.Run(input, "trial", file, "--date", "2026-03-16");

        Assert.Equal(code, got);
        Assert.Contains("othing was saved.", output + error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(file));
    }

    [Fact]
    public void With_a_red_flag_nothing_is_tried()
    {
        using var folder = new TempFolder();
        var (code, output, error) = Cli.Run(Typed, "trial", Copy(folder, "w-701-red-flag"), "--date", "2026-03-16");

        Assert.Equal((3, ""), (code, output));
        Assert.Contains("Call the emergency service now", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_try_that_did_not_take_place_asks_nothing_more()
    {
        using var folder = new TempFolder();
        string file = Copy(folder, "k-014-stiff-shoulder");

        var (code, _, _) = Cli.Run("1\nunknown\nunknown\nno\nyes\n88\n", "trial", file, "--date", "2026-03-16");

        Assert.Equal(0, code);
        Assert.Equal("""[{"kind":"real","level":"88","problems":[]}]""", Flat(Sessions(file)[1].GetProperty("trials")[0].GetProperty("runs")));
        Assert.Equal(First(DemoPeople.File("k-014-stiff-shoulder")), First(file));
    }

    [Theory]
    [InlineData("\"kind\":\"real\"", "\"kind\":\"wet\"", "sessions[0].trials[0].runs[0].kind")]
    [InlineData("\"level\":\"05\"", "\"level\":\"5\"", "sessions[0].trials[0].runs[0].level")]
    [InlineData("\"effort\":4", "\"effort\":11", "sessions[0].trials[0].runs[0].effort")]
    [InlineData("\"minutes\":7", "\"minutes\":\"7\"", "sessions[0].trials[0].runs[0].minutes")]
    [InlineData("\"problems\":[\"tired\"]", "\"problems\":[\"bored\"]", "sessions[0].trials[0].runs[0].problems[0]")]
    [InlineData("\"goal\":\"06\"", "\"goal\":\"88\"", "sessions[0].trials[0].goal")]
    [InlineData("\"aid\":\"tongs\"", "\"aid\":\"Tongs!\"", "sessions[0].trials[0].plan.aid")]
    [InlineData("\"posture\":\"seated\"", "\"posture\":\"sitting\"", "sessions[0].trials[0].plan.posture")]
    public void A_trial_in_a_file_is_checked_by_reader_and_schema_alike(string good, string bad, string place)
    {
        const string profile = """{"format":1,"person":"K-014","sessions":[{"date":"2026-03-09","depth":"quick","answers":{},"trials":[{"plan":{"aid":"tongs","addOns":[],"approach":"behind","posture":"seated"},"before":"03","goal":"06","runs":[{"kind":"real","level":"05","cleanliness":"clean","minutes":7,"effort":4,"problems":["tired"]}]}]}]}""";
        var reader = new ProfileReader(BuiltIn.Questions());
        var schema = Json.Schema.JsonSchema.FromText(File.ReadAllText(Repository.Path("profiles", "schema", "profile.schema.json")));

        Assert.NotNull(reader.Read(System.Text.Encoding.UTF8.GetBytes(profile)).Value);
        Assert.True(Fits(profile));
        string wrong = profile.Replace(good, bad, StringComparison.Ordinal);
        Assert.Equal(place, Assert.Single(reader.Read(System.Text.Encoding.UTF8.GetBytes(wrong)).Issues.Where(i => i.Code != "no-run")).Place);
        Assert.False(Fits(wrong));

        bool Fits(string text)
        {
            using var document = JsonDocument.Parse(text);
            return schema.Evaluate(document.RootElement).IsValid;
        }
    }

    [Theory]
    [InlineData("a-512-thawing-shoulder")]
    [InlineData("g-226-sore-hands")]
    public void The_profiles_with_several_visits_fit_the_schema_and_are_written_as_they_are(string name)
    {
        string text = File.ReadAllText(Repository.Path("profiles", "visits", name + ".json"));
        using var document = JsonDocument.Parse(text);
        using var stream = new MemoryStream();
        var questions = BuiltIn.Questions();

        Assert.True(Json.Schema.JsonSchema.FromText(File.ReadAllText(Repository.Path("profiles", "schema", "profile.schema.json"))).Evaluate(document.RootElement).IsValid);
        Assert.True(new ProfileReader(questions).Read(System.Text.Encoding.UTF8.GetBytes(text)).TryGet(out var profile));
        new ProfileWriter(questions).Write(profile, stream);
        using var once = JsonDocument.Parse(stream.ToArray());
        using var again = new MemoryStream();
        new ProfileWriter(questions).Write(new ProfileReader(questions).Read(stream.ToArray()).Value!, again);
        Assert.Equal(stream.ToArray(), again.ToArray());
        Assert.Equal(Count(document.RootElement, "runs"), Count(once.RootElement, "runs"));
    }

    private static int Count(JsonElement profile, string member) => profile.GetProperty("sessions").EnumerateArray()
        .SelectMany(s => s.TryGetProperty("trials", out var t) ? t.EnumerateArray() : []).Sum(t => t.GetProperty(member).GetArrayLength());

    private static string Tried(TempFolder folder)
    {
        string file = Copy(folder, "k-014-stiff-shoulder", "tried");
        Assert.Equal(0, Cli.Run("", ["trial", file, .. AllOptions]).Code);
        return file;
    }

    private static string Copy(TempFolder folder, string person, string name = "profile") => folder.File(name + ".json", File.ReadAllText(DemoPeople.File(person)));

    private static string First(string file)
    {
        using var document = JsonDocument.Parse(Cli.Run("", "rank", file, "--format", "json", "--top", "1").Output);
        return document.RootElement[0].GetProperty("shortlist")[0].GetProperty("plan").GetProperty("aid").GetString()!;
    }

    private static JsonElement Sessions(string file) => JsonDocument.Parse(File.ReadAllText(file)).RootElement.GetProperty("sessions");

    private static string Flat(JsonElement element)
    {
        using var buffer = new MemoryStream();
        using (var writer = new Utf8JsonWriter(buffer))
        {
            element.WriteTo(writer);
        }

        return System.Text.Encoding.UTF8.GetString(buffer.ToArray());
    }
}
