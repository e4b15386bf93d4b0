using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Linear;

public sealed class LinearInterviewTests
{
    private const string Quick = "red-flags=none precautions=none conditions=none behind=outer-buttock front=groin lean=forward grasp=whole-hand\nfinish\nunknown\nunknown\nunknown\nunknown\n";

    [Fact]
    public void A_piped_quick_interview_reads_as_approved() =>
        Golden.Match(Cli.Run(Quick, "assess", "--linear").Output, "quick.txt");

    [Fact]
    public void Answers_by_short_and_by_whole_ids_give_the_same_profile()
    {
        using var folder = new TempFolder();
        string byNumber = folder.File("a.json"), byName = folder.File("b.json");

        Assert.Equal(0, Cli.Run(Quick, "assess", "--linear", "--save", byNumber, "--person", "K-014").Code);
        Assert.Equal(0, Cli.Run("RED-FLAGS=none precautions=none conditions=none reach-behind=outer-buttock reach-front=groin lean=forward grasp=whole-hand\nfinish\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear", "--save", byName, "--person", "K-014").Code);

        Assert.Equal(File.ReadAllText(byNumber), File.ReadAllText(byName));
    }

    [Fact]
    public void Who_asks_for_the_result_at_once_is_still_asked_about_safety_and_told_what_is_not_known()
    {
        string said = Cli.Run("finish\nunknown\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear").Output;

        string[] asked = [.. said.Split('\n').Where(l => BuiltIn.Questions().All.Any(q => q.Prompt == l))];
        Assert.Equal(
            BuiltIn.Questions().All.Where(q => q.Safety && q.Depths.Contains(Depth.Quick) && q.AskWhen.IsEmpty).Select(q => q.Prompt),
            asked.Distinct());
        Assert.Contains("The questions were ended early. Result:", said, StringComparison.Ordinal);
        Assert.Contains("It is not known whether there is a sign that needs a doctor today.", said, StringComparison.Ordinal);
        Assert.Contains("It is not known which precautions apply.", said, StringComparison.Ordinal);
        string answered = Cli.Run(Quick, "assess", "--linear").Output;
        Assert.DoesNotContain("It is not known wh", answered, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sign_told_after_the_person_asked_for_the_result_stops_everything()
    {
        string said = Cli.Run("finish\n2\n", "assess", "--linear").Output;

        Assert.Contains("Stop. No aid is recommended today.", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Place 1.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_option_is_taken_by_number_label_and_id()
    {
        var questions = BuiltIn.Questions();
        foreach (var question in questions.All.Where(q => q.Kind == QuestionKind.Choice))
        {
            for (int i = 0; i < question.Options.Length; i++)
            {
                var option = question.Options[i];
                foreach (string typed in (string[])[$"{i + 1}", option.Label, option.Id, option.Label.ToUpperInvariant()])
                {
                    var engine = new App.Sessions.InterviewEngine(questions, a => a[question.Id] is null ? [question] : []);
                    Assert.True(engine.Submit(typed).Accepted, $"{question.Id}: {typed}");
                    Assert.Equal(option.Id, engine.Answers.Choice(question.Id));
                }
            }
        }
    }

    /// <summary>How an answer was obtained sets its uncertainty, and help says to type it after any answer.</summary>
    [Fact]
    public void How_a_range_was_obtained_is_kept_for_the_joints()
    {
        var questions = BuiltIn.Questions();
        var engine = new App.Sessions.InterviewEngine(questions, a => a[QuestionIds.Joints] is null ? [questions[QuestionIds.Joints]] : []);

        var reply = engine.Submit("40 reported");
        Assert.EndsWith(", reported.", reply.Text, StringComparison.Ordinal);
        Assert.Equal(Core.Person.HowObtained.Reported, engine.AnswersSoFar[QuestionIds.Joints]!.How);
        while (engine.Current is not null)
        {
            engine.Unknown();
        }

        Assert.Equal(Core.Person.HowObtained.Reported, engine.Answers[QuestionIds.Joints]!.How);
    }

    [Fact]
    public void Nonsense_is_never_taken_and_never_throws()
    {
        var questions = BuiltIn.Questions();
        Gen.Select(Gen.Int[0, questions.All.Length - 1], Gen.String, (i, s) => (Question: questions.All[i], Text: s)).Sample(c =>
        {
            var engine = new App.Sessions.InterviewEngine(questions, a => a[c.Question.Id] is null ? [c.Question] : []);
            var reply = engine.Submit(c.Text);
            Assert.True(reply.Accepted == engine.Answers.Ids.Any() || c.Question.Kind == QuestionKind.Parts);
            Assert.NotEmpty(reply.Text);
        });
    }

    [Theory]
    [InlineData("reach=groin", "reach may be reach-behind or reach-front. Type more of it.")]
    [InlineData("glove=yes", "glove is not a question.")]
    [InlineData("grasp=press", "press may be press-with-palm-or-fist or press-with-forearm. Type more of it.")]
    public void An_id_that_is_not_clear_is_refused_and_nothing_is_taken(string typed, string fault)
    {
        var (code, output, error) = Cli.Run(string.Empty, "assess", "--linear", "place=bed", typed);

        Assert.Equal(2, code);
        Assert.Equal(fault + "\n", error);
        Assert.DoesNotContain("Place 1.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_typed_with_the_command_are_not_asked_again()
    {
        string output = Cli.Run("quit\n", "assess", "--linear", "red-flags=none", "precautions=sternal,latex", "posture=seated", "grasp=whole", "age=74").Output;

        Assert.Contains("6 of ", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Which precautions", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_answer_changes_the_line_with_the_cursor()
    {
        string output = Cli.Run("none\nnone\nnone\n9\n2\n", "assess", "--linear").Output;

        Assert.Contains("Error: 9 is not a number from 1 to 6 and not a name from the list.\nNot 1 to 6. Number: \nSeated, leaning forward.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_back_repeat_list_and_unknown_work_at_a_prompt()
    {
        string output = Cli.Run("none\nhelp\nlist\nrepeat\nback\nnone\nunknown\nback\n\nquit\n", "assess", "--linear").Output;

        Assert.Contains("How to find out: Read the discharge letter", output, StringComparison.Ordinal);
        Assert.Contains("Why it matters: A precaution rules out", output, StringComparison.Ordinal);
        Assert.Contains("1. Warning signs: none of them, reported.", output, StringComparison.Ordinal);
        Assert.Contains("Going back.", output, StringComparison.Ordinal);
        Assert.Contains("Enter keeps none: ", output, StringComparison.Ordinal);
        Assert.Contains("Not known.", output, StringComparison.Ordinal);
        Assert.Contains("Enter keeps unknown: ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void How_an_answer_was_obtained_can_be_said_after_it()
    {
        using var folder = new TempFolder();
        string path = folder.File("a.json");

        Cli.Run("none\nnone\nnone\n2 reported\nfinish\nunknown\nunknown\nunknown\nunknown\n", "assess", "--linear", "--save", path, "--person", "K-014");

        Assert.Contains("\"posture\": {\n          \"value\": \"seated-leaning-forward\",\n          \"how\": \"reported\"", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void The_prompt_line_says_number_total_and_what_to_type_within_40_cells()
    {
        foreach (string depth in (string[])["quick", "full", "measured"])
        {
            string output = Cli.Run(string.Concat(Enumerable.Repeat("unknown\n", 80)), "assess", "--linear", "--depth", depth).Output;
            string[] prompts = [.. output.Split('\n').Where(l => l.EndsWith(": ", StringComparison.Ordinal))];
            Assert.True(prompts.Length >= 10);
            Assert.All(prompts, p => Assert.Matches(@"^\d+ of \d+\. .+: $", p));
            Assert.All(prompts, p => Assert.InRange(p.Length, 1, 40));
        }
    }

    [Fact]
    public void Lines_hold_letters_digits_and_plain_punctuation_only()
    {
        string output = Cli.Run(string.Concat(Enumerable.Repeat("help\nunknown\n", 80)), "assess", "--linear", "--depth", "measured").Output;

        Assert.DoesNotMatch(@"[^A-Za-z0-9 .,;:?'\n-]", output);
    }

    [Fact]
    public void Input_that_ends_early_is_told_and_what_was_answered_is_kept()
    {
        using var folder = new TempFolder();
        string path = folder.File("a.json");

        var (code, output, _) = Cli.Run("none\nnone\n", "assess", "--linear", "--save", path, "--person", "K-014");

        Assert.Equal(3, code);
        Assert.Contains("Input ended at question 3 of ", output, StringComparison.Ordinal);
        Assert.Contains("precautions", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_interview_adds_a_session_to_the_file()
    {
        using var folder = new TempFolder();
        string path = folder.File("a.json");

        Cli.Run(Quick, "assess", "--linear", "--save", path, "--person", "K-014", "--date", "2026-03-09");
        Cli.Run(Quick, "assess", "--linear", "--save", path, "--date", "2026-04-20");

        var profile = new ProfileFile(BuiltIn.Questions()).Read(path).Value!;
        Assert.Equal("K-014", profile.Person);
        Assert.Equal([new DateOnly(2026, 3, 9), new(2026, 4, 20)], profile.Sessions.Select(s => s.Date));
    }

    [Fact]
    public void A_broken_file_is_not_overwritten()
    {
        using var folder = new TempFolder();
        string path = folder.File("a.json", "{ half");

        var (code, _, error) = Cli.Run(Quick, "assess", "--linear", "--save", path);

        Assert.Equal(3, code);
        Assert.Contains("Nothing was asked.", error, StringComparison.Ordinal);
        Assert.Equal("{ half", File.ReadAllText(path));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told_and_the_answers_are_not_half_written()
    {
        using var folder = new TempFolder();
        string path = Path.Combine(folder.Path, "none", "a.json");

        var (code, _, error) = Cli.Run(Quick, "assess", "--linear", "--save", path, "--person", "K-014");

        Assert.Equal(3, code);
        Assert.Contains("its folder does not exist", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }
}
