using System.Text;
using ToiletAid.App.Files;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Batch;

public sealed class SimulateTests
{
    private static readonly QuestionSet Questions = BuiltIn.Questions();

    private static readonly Lazy<Profile[]> Crowd = new(() => Read(Cli.Run("", "simulate", "--people", TestRun.Times(4000, 1500).ToString(System.Globalization.CultureInfo.InvariantCulture), "--seed", "5").Output));

    [Theory]
    [InlineData("quick")]
    [InlineData("full")]
    [InlineData("measured")]
    public void The_reader_takes_every_person_and_every_relevant_question_is_answered(string depth)
    {
        var people = Read(Cli.Run("", "simulate", "--people", "200", "--depth", depth).Output);

        Assert.Equal(200, people.Length);
        Assert.Equal(200, people.Select(p => p.Person).Distinct(StringComparer.Ordinal).Count());
        Assert.All(people, p =>
        {
            Assert.Equal(depth, Words.Of(p.Latest.Depth));
            Assert.Empty(OpenQuestions.Open(Questions, p.Latest.Depth, p.Latest.Answers));
            Assert.All(p.Latest.Answers.Ids, id => Assert.True(OpenQuestions.IsRelevant(Questions[id], p.Latest.Answers)));
        });
    }

    [Fact]
    public void A_larger_set_begins_with_the_smaller_one_and_another_seed_gives_others()
    {
        string some = Cli.Run("", "simulate", "--people", "20", "--seed", "3").Output;

        Assert.StartsWith(some, Cli.Run("", "simulate", "--people", "30", "--seed", "3").Output, StringComparison.Ordinal);
        Assert.NotEqual(some, Cli.Run("", "simulate", "--people", "20", "--seed", "4").Output);
    }

    [Theory]
    [InlineData("reach-behind")]
    [InlineData("grasp")]
    [InlineData("feeling")]
    [InlineData("steps")]
    [InlineData("helper")]
    [InlineData("stool")]
    [InlineData("place")]
    public void Answers_have_the_shares_that_the_question_expects(string question)
    {
        string[] given = [.. Crowd.Value.Select(p => p.Latest.Answers.Choice(new(question))).OfType<string>()];
        double total = Questions[new(question)].Options.Sum(o => o.Share);

        foreach (var option in Questions[new(question)].Options)
        {
            double expected = option.Share / total;
            double error = Math.Sqrt(expected * (1 - expected) / given.Length);
            Assert.InRange(given.Count(o => o == option.Id) / (double)given.Length, expected - (4 * error), expected + (4 * error));
        }
    }

    [Fact]
    public void Weak_hands_are_clumsier_and_older_and_short_of_reach_before_and_behind_together()
    {
        var people = Crowd.Value.Select(p => p.Latest.Answers).ToList();

        Assert.True(Share(people, a => a.Choice((QuestionId)QuestionIds.Grasp) == "whole-hand", a => a.Choice((QuestionId)QuestionIds.Dexterity) == "cannot") > 1.5 * Share(people, a => a.Choice((QuestionId)QuestionIds.Grasp) == "fine-pinch", a => a.Choice((QuestionId)QuestionIds.Dexterity) == "cannot"));
        Assert.True(Share(people, a => Years(a) >= 80, a => a.Choice((QuestionId)QuestionIds.Grasp) is "none" or "press-with-forearm") > Share(people, a => Years(a) < 55, a => a.Choice((QuestionId)QuestionIds.Grasp) is "none" or "press-with-forearm"));
        Assert.True(Share(people, a => a.Choice((QuestionId)QuestionIds.ReachBehind) == "not-past-the-hip", a => a.Choice((QuestionId)QuestionIds.ReachFront) == "not-past-mid-thigh") > 1.5 * Share(people, a => a.Choice((QuestionId)QuestionIds.ReachBehind) == "the-cleft", a => a.Choice((QuestionId)QuestionIds.ReachFront) == "not-past-mid-thigh"));
        Assert.True(Share(people, a => a.Choice(QuestionIds.Feeling) == "none", a => a.Choice(QuestionIds.Skin) != "sound") > 1.2 * Share(people, a => a.Choice(QuestionIds.Feeling) == "usual", a => a.Choice(QuestionIds.Skin) != "sound"));
        Assert.True(Share(people, a => a.Choice(QuestionIds.Steps) == "one", a => a.Choice(QuestionIds.Helper) == "always") > 1.5 * Share(people, a => a.Choice(QuestionIds.Steps) == "four-or-more", a => a.Choice(QuestionIds.Helper) == "always"));
    }

    [Fact]
    public void Stature_and_mass_are_those_of_the_survey()
    {
        // Gordon et al. 2014, NATICK/TR-15/007, women: stature 162.85 cm, deviation 6.42; mass 67.76 kg, deviation 10.98.
        var women = Crowd.Value.Select(p => p.Latest.Answers).Where(a => a.Choice((QuestionId)QuestionIds.Sex) == "female").ToList();
        double[] stature = [.. women.Select(a => a.Si(QuestionIds.Stature)).OfType<double>().Select(m => m * 100)], mass = [.. women.Select(a => a.Si(QuestionIds.Mass)).OfType<double>()];

        Assert.InRange(stature.Average(), 162.85 - 0.7, 162.85 + 0.7);
        Assert.InRange(Spread(stature), 6.42 - 0.5, 6.42 + 0.5);
        Assert.InRange(mass.Average(), 67.76 - 1.2, 67.76 + 1.2);
        Assert.InRange(Spread(mass), 10.98 - 0.9, 10.98 + 0.9);
    }

    [Fact]
    public void Nobody_in_bed_sits_and_no_man_bleeds_monthly()
    {
        Assert.All(Crowd.Value.Select(p => p.Latest.Answers).Where(a => a.Choice(QuestionIds.Place) == "bed"), a => Assert.Contains(a.Choice((QuestionId)QuestionIds.Posture), (string?[])["side-lying", "reclined", null]));
        Assert.All(Crowd.Value.Select(p => p.Latest.Answers).Where(a => a.Choice((QuestionId)QuestionIds.Sex) != "female"), a => Assert.DoesNotContain("menstrual-blood", a.Many(QuestionIds.Also) ?? []));
        Assert.Contains(Crowd.Value, p => (p.Latest.Answers.Many(QuestionIds.Also) ?? []).Contains("menstrual-blood"));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("10000001")]
    [InlineData("many")]
    [InlineData("99999999999999999999")]
    public void A_number_of_people_that_cannot_be_made_is_wrong_usage(string people)
    {
        var (code, _, error) = Cli.Run("", "simulate", "--people", people);

        Assert.Equal(2, code);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    private static double Years(Answers answers) => answers[QuestionIds.Age] is { Value: AnswerValue.Number n } ? n.Amount : double.NaN;

    private static double Share(IEnumerable<Answers> people, Func<Answers, bool> among, Func<Answers, bool> of)
    {
        var group = people.Where(among).ToList();
        return group.Count(of) / (double)group.Count;
    }

    private static double Spread(double[] values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1));
    }

    private static Profile[] Read(string ndjson)
    {
        var reader = new ProfileReader(Questions);
        return [.. ndjson.TrimEnd('\n').Split('\n').Select(line =>
        {
            var read = reader.Read(Encoding.UTF8.GetBytes(line));
            Assert.Empty(read.Issues);
            return read.Value!;
        })];
    }
}
