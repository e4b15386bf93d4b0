using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Explaining;

public sealed class PlannerTests
{
    private static readonly KnowledgeBase Knowledge = BuiltIn.Knowledge();
    private static readonly Advisor Advisor = new(Knowledge, new());
    private static readonly QuestionPlanner Planner = new(Knowledge, Advisor);

    /// <summary>Every demo person interviewed twice from the answers of the file: with all relevant questions, and with only those that can matter.</summary>
    [Fact]
    public void Asking_only_what_matters_asks_less_and_comes_to_the_approved_places()
    {
        var lines = new List<string> { "person, depth: questions without the planner, with it, first place without it, with it" };
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            var session = new ProfileFile(Knowledge.Questions).Read(DemoPeople.File(name)).Value!.Latest;
            var all = Interview(session, answers => OpenQuestions.Open(Knowledge.Questions, session.Depth, answers));
            var planned = Interview(session, answers => Planner.Open(session.Depth, answers));

            Assert.True(planned.Count <= all.Count);
            lines.Add($"{name}, {Words.Of(session.Depth)}: {all.Count}, {planned.Count}, {First(all.Answers)}, {First(planned.Answers)}");
        }

        Golden.Match(string.Join('\n', lines) + "\n", "planner.txt");
    }

    [Fact]
    public void The_quick_depth_asks_at_most_ten_questions_on_median()
    {
        int[] counts = [.. DemoPeople.Names.Select(n => new ProfileFile(Knowledge.Questions).Read(DemoPeople.File(n.Data)).Value!.Latest)
            .Where(s => Advisor.Advise(s.Answers).Stops.IsEmpty)
            .Select(s => Interview(s, answers => Planner.Open(Depth.Quick, answers)).Count).Order()];

        Assert.InRange(counts[counts.Length / 2], 1, 10);
    }

    [Fact]
    public void Safety_questions_are_never_skipped()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data).Where(n => n != "w-701-red-flag"))
        {
            var session = new ProfileFile(Knowledge.Questions).Read(DemoPeople.File(name)).Value!.Latest;
            var asked = Interview(session, answers => Planner.Open(session.Depth, answers)).Answers;

            Assert.All(OpenQuestions.Relevant(Knowledge.Questions, session.Depth, asked).Where(q => q.Safety), q => Assert.NotNull(asked[q.Id]));
        }
    }

    [Fact]
    public void A_red_flag_ends_the_interview() =>
        Assert.Empty(Planner.Open(Depth.Measured, Answers.None.With("red-flags", new(new AnswerValue.Many(["new-severe-pain"]), HowObtained.Reported))));

    [Fact]
    public void Next_says_which_question_and_why()
    {
        string text = Cli.Run("", "next", DemoPeople.File("b-118-fresh-hip"), "--depth", "full").Output;

        Assert.Matches("^[A-Z][a-z-]+ more questions? could change the result\\.\nNext: .*\\?\n", text);
    }

    private static (int Count, Answers Answers) Interview(Session session, Func<Answers, ImmutableArray<Question>> open)
    {
        var engine = new InterviewEngine(Knowledge.Questions, open);
        int count = 0;
        while (engine.Current is { } step)
        {
            count++;
            engine.Take(step.Question, session.Answers[step.Question.Id] ?? new(new AnswerValue.NotKnown(), null));
        }

        return (count, engine.Answers);
    }

    private static string First(Answers answers)
    {
        var advice = Advisor.Advise(answers);
        return advice.Stops.IsEmpty ? advice.Ranked.FirstOrDefault()?.Plan.Aid.Id ?? "none" : "stop";
    }
}
