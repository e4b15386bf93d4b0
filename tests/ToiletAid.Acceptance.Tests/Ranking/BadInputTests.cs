namespace ToiletAid.Acceptance.Tests.Ranking;

public sealed class BadInputTests
{
    private const string Good = """{"format":1,"person":"K-014","sessions":[{"date":"2026-03-09","depth":"quick","answers":{"grasp":{"value":"whole-hand","how":"observed"}}}]}""";

    public static TheoryData<string, string, string> Faults => new()
    {
        { Answers("\"gras\":{\"value\":\"none\",\"how\":\"observed\"}"), "sessions[0].answers.gras: ", "gras is not a question, did you mean grasp" },
        { Answers("\"grasp\":{\"value\":\"pincer\",\"how\":\"observed\"}"), "sessions[0].answers.grasp.value: ", "pincer is not an answer to grasp, use fine-pinch, whole-hand" },
        { Answers("\"stature\":{\"value\":172,\"unit\":\"mm\",\"how\":\"measured\"}"), "sessions[0].answers.stature.unit: ", "mm is not a unit for this, use cm or m or ft or in" },
        { Answers("\"stature\":{\"value\":172,\"how\":\"measured\"}"), "sessions[0].answers.stature: ", "unit is missing, add cm or m or ft or in" },
        { Answers("\"stature\":{\"value\":90,\"unit\":\"cm\",\"how\":\"measured\"}"), "sessions[0].answers.stature.value: ", "90 cm is out of range for stature, which is 120 to 220 cm" },
        { Answers("\"mass\":{\"value\":400,\"unit\":\"kg\",\"how\":\"measured\"}"), "sessions[0].answers.mass.value: ", "400 kg is out of range for mass, which is 30 to 250 kg" },
        { Answers("\"mass\":{\"value\":1e400,\"unit\":\"kg\",\"how\":\"measured\"}"), "sessions[0].answers.mass.value: ", "should be a number" },
        { Answers("\"age\":{\"value\":70.5,\"how\":\"reported\"}"), "sessions[0].answers.age.value: ", "should be a whole number" },
        { Answers("\"grasp\":{\"value\":\"none\",\"how\":\"guessed\"}"), "sessions[0].answers.grasp.how: ", "use observed, reported, measured" },
        { Answers("\"grasp\":{\"value\":\"none\"}"), "sessions[0].answers.grasp: ", "how is missing, add observed, reported or measured" },
        { Answers("\"grasp\":\"none\""), "sessions[0].answers.grasp: ", "should be an object with value and how" },
        { Answers("\"grasp\":{\"value\":\"none\",\"unit\":\"kg\",\"how\":\"observed\"}"), "sessions[0].answers.grasp.unit: ", "unit is not known here" },
        { Answers("\"joints\":{\"value\":{\"knee\":20},\"unit\":\"deg\",\"how\":\"measured\"}"), "sessions[0].answers.joints.value.knee: ", "knee is not part of joints" },
        { Answers("\"priorities\":{\"value\":[\"skin\",[\"skin\"]],\"how\":\"reported\"}"), "sessions[0].answers.priorities.value: ", "appears twice" },
        { Good[..^20], "", "it ends before it should, so a part is missing" },
        { Good.Replace("\"depth\":", "\"depth\" ", StringComparison.Ordinal), "line 1, column ", "not valid JSON" },
        { Good.Replace("\"person\":\"K-014\"", "\"person\":\"K-014\",\"person\":\"K-015\"", StringComparison.Ordinal), "line 1, column ", "appears twice" },
        { Good.Replace("\"format\":1", "\"format\":2", StringComparison.Ordinal), "format: ", "format 2 is newer than this program" },
        { Good.Replace("2026-03-09", "9 March 2026", StringComparison.Ordinal), "sessions[0].date: ", "write year, month and day" },
        { Good.Replace("\"quick\"", "\"deep\"", StringComparison.Ordinal), "sessions[0].depth: ", "use quick, full, measured" },
        { Good.Replace("\"sessions\"", "\"visits\"", StringComparison.Ordinal), "", "visits is not known here, use format, revision, hash, person, sessions" },
        { "[]", "", "a profile is an object in braces" },
        { "", "", "empty or not a regular file" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_told_in_one_sentence_with_place_value_and_fix(string text, string place, string message)
    {
        using var folder = new TempFolder();
        string path = folder.File("bad.json", text);

        var (code, output, error) = Cli.Run("", "rank", path);

        Assert.Equal(3, code);
        Assert.Empty(output);
        string told = Assert.Single(error.TrimEnd('\n').Split('\n'), line => line.Contains(message, StringComparison.Ordinal));
        Assert.StartsWith(path, told, StringComparison.Ordinal);
        Assert.Contains(place, told, StringComparison.Ordinal);
        Assert.EndsWith(".", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Anna", "looks like a name")]
    [InlineData("J Smith 3", "is not valid")]
    [InlineData("1951-04-12", "looks like a birth date or a phone number")]
    [InlineData("07700900123", "looks like a birth date or a phone number")]
    [InlineData("", "is not valid")]
    public void A_code_that_could_tell_who_it_is_is_refused_and_not_repeated(string code, string why)
    {
        using var folder = new TempFolder();
        string path = folder.File("bad.json", Good.Replace("K-014", code, StringComparison.Ordinal));

        var (exit, _, error) = Cli.Run("", "rank", path);

        Assert.Equal(3, exit);
        Assert.Contains("person: the person's code " + why, error, StringComparison.Ordinal);
        Assert.False(code.Length > 3 && error.Replace(path, "", StringComparison.Ordinal).Contains(code, StringComparison.Ordinal));
    }

    [Fact]
    public void Other_files_of_the_folder_are_still_scored()
    {
        using var folder = new TempFolder();
        folder.File("a.json", Good);
        folder.File("b.json", "{");
        folder.File("c.json", Good.Replace("K-014", "K-015", StringComparison.Ordinal));

        var (code, output, error) = Cli.Run("", "rank", folder.Path, "--format", "ndjson");

        Assert.Equal(3, code);
        Assert.Equal(2, output.TrimEnd('\n').Split('\n').Length);
        Assert.Contains("b.json", error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_folder_and_a_missing_file_are_told()
    {
        using var folder = new TempFolder();

        Assert.Contains("the folder has no profiles", Cli.Run("", "rank", folder.Path).Error, StringComparison.Ordinal);
        Assert.Contains("there is no such file", Cli.Run("", "rank", folder.File("none.json")).Error, StringComparison.Ordinal);
    }

    /// <summary>As from a script whose variable is not set.</summary>
    [Theory]
    [InlineData(3, "rank", "")]
    [InlineData(3, "why", "")]
    [InlineData(3, "erase", "", "--yes")]
    [InlineData(3, "rank", "x.json", "--rejects", "")]
    [InlineData(2, "assess", "--linear", "--save", "")]
    public void An_empty_name_is_told_as_such(int expected, params string[] args)
    {
        var (code, output, error) = Cli.Run("", args);

        Assert.Equal((expected, ""), (code, output));
        Assert.Contains(expected == 2 ? "is empty" : "that is not a file name", Assert.Single(error.TrimEnd('\n').Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_is_not_waited_for()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "there is no such device on Windows");
        Assert.Contains("not a regular file", Cli.Run("", "rank", "/dev/zero").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rank")]
    [InlineData("rank", "x.json", "--format", "xml")]
    [InlineData("rank", "x.json", "--top", "0")]
    [InlineData("assess", "--depth", "deep")]
    [InlineData("assess", "--date", "today")]
    [InlineData("assess", "--person", "Anna")]
    [InlineData("fly")]
    public void Wrong_usage_is_told_in_one_line_and_has_its_own_exit_code(params string[] args)
    {
        var (code, output, error) = Cli.Run("", args);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void The_demo_profiles_are_all_good() =>
        Assert.Equal(0, Cli.Run("", "rank", Repository.Path("profiles"), "--format", "ndjson").Code);

    private static string Answers(string answers) =>
        "{\"format\":1,\"person\":\"K-014\",\"sessions\":[{\"date\":\"2026-03-09\",\"depth\":\"quick\",\"answers\":{" + answers + "}}]}";
}
