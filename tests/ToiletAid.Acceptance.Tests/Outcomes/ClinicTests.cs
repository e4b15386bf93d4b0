using System.Text.Json.Nodes;
using ToiletAid.App.Clinics;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Acceptance.Tests.Outcomes;

public sealed class ClinicTests : IDisposable
{
    private static readonly string People = TriedPeople.Lines(300);

    private readonly TempFolder _folder = new();
    private readonly string _file;
    private readonly string _person = DemoPeople.File("k-014-stiff-shoulder");

    public ClinicTests()
    {
        _file = _folder.File("clinic.json");
        Cli.Run(People, "outcomes", "-", "--save", _file);
    }

    public void Dispose() => _folder.Dispose();

    private string Checksum => ((string)JsonNode.Parse(File.ReadAllText(_file))!["hash"]!)["sha256:".Length..][..12];

    [Theory]
    [InlineData("rank PERSON")]
    [InlineData("rank PERSON --format json")]
    [InlineData("rank PERSON --format ndjson")]
    [InlineData("rank PERSON --format csv")]
    [InlineData("why PERSON")]
    [InlineData("why PERSON --format json")]
    [InlineData("next PERSON")]
    [InlineData("next PERSON --format json")]
    [InlineData("report PERSON")]
    [InlineData("report PERSON --kind record")]
    [InlineData("compare VISITS")]
    [InlineData("compare VISITS --format json")]
    [InlineData("whatif PERSON --change priorities=skin")]
    public void Every_output_says_that_the_clinic_s_own_values_are_used(string words)
    {
        string[] args = [.. words.Split(' ').Select(w => w == "PERSON" ? _person : w == "VISITS" ? DemoPeople.File("visits/a-512-thawing-shoulder") : w)];

        Assert.Contains(Checksum, Cli.Run(string.Empty, [.. args, "--clinic", _file]).Output, StringComparison.Ordinal);
        Assert.DoesNotContain("clinic's own values", Cli.Run(string.Empty, args).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_that_failed_often_loses_value_in_the_ranking()
    {
        var knowledge = BuiltIn.Knowledge();
        Assert.True(ClinicFile.Read(_file, knowledge).TryGet(out var clinic));
        Assert.True(new ProfileFile(knowledge.Questions).Read(_person).TryGet(out var profile));

        Assert.True(Value(knowledge) - Value(knowledge with { Clinic = clinic }) > 0.03);

        double Value(KnowledgeBase with) => new Advisor(with, new()).Advise(profile.Latest.Answers).Ranked.Single(r => r.Plan.Aid.Id == "tongs").Value;
    }

    [Fact]
    public void None_is_the_built_in_values() =>
        Assert.Equal(Cli.Run(string.Empty, "rank", _person).Output, Cli.Run(string.Empty, "rank", _person, "--clinic", "none").Output);

    [Fact]
    public void A_file_that_was_changed_is_refused()
    {
        File.WriteAllText(_file, File.ReadAllText(_file).Replace("were predicted", "were expected", StringComparison.Ordinal));

        Refused("hash: the file was changed after it was saved, restore it from a copy or save it again with toiletaid outcomes --save.");
    }

    [Theory]
    [InlineData("\"people\": 300", "\"people\": 12", "at people: it rests on 12 people, which tells less than the built-in values, wait until there are 60.")]
    [InlineData("\"people\": 100,", "\"people\": 3,", "at kinds[0].people: 3 people could be told apart, a cell has none or at least 5, save it again with toiletaid outcomes --save.")]
    [InlineData("\"holds\": \"clinic-coefficients\"", "\"holds\": \"stock\"", ": it is not a file of a clinic's own values, make one with toiletaid outcomes --save.")]
    [InlineData("\"aid\": \"tongs\"", "\"aid\": \"Tongs of Mrs X\"", "at kinds[2].aid: Tongs of Mrs X is not an id, use the id of a kind of aid such as long-clamp, or null.")]
    [InlineData("\"criterion\": \"handling\"", "\"criterion\": \"beauty\"", "at kinds[0].shifts[0].criterion: beauty is not a criterion, use reach,")]
    [InlineData("\"format\": 1", "\"format\": 2", "at format: format 2 is not one that this program reads, use 1.")]
    [InlineData("\"tries\":", "\"trials\":", "at trials: trials is not known here, use format,")]
    public void Every_fault_is_told_with_its_place(string good, string bad, string fault)
    {
        string text = File.ReadAllText(_file);
        Assert.Contains(good, text, StringComparison.Ordinal);
        int at = text.IndexOf(good, StringComparison.Ordinal);
        File.WriteAllText(_file, text[..at] + bad + text[(at + good.Length)..]);

        Refused(fault);
    }

    [Fact]
    public void A_file_that_is_not_there_is_refused()
    {
        File.Delete(_file);

        Refused("there is no such file, check the path.");
    }

    private void Refused(string fault)
    {
        var run = Cli.Run(string.Empty, "rank", _person, "--clinic", _file);

        Assert.Equal(3, run.Code);
        Assert.Empty(run.Output);
        Assert.Contains(fault, run.Error, StringComparison.Ordinal);
        Assert.Contains(_file, run.Error, StringComparison.Ordinal);
    }
}
