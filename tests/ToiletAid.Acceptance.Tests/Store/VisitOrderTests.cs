using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Clocks that were set back and years that were mistyped: what was written last is heard.</summary>
public sealed class VisitOrderTests : IDisposable
{
    private const string Flagged = "1\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n";
    private const string Clear = "none\nfinish\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\nunknown\n";

    private static readonly DateTimeOffset March = new(2026, 3, 9, 10, 0, 0, TimeSpan.Zero);

    private readonly TempFolder _folder = new();
    private readonly string _path;

    public VisitOrderTests() => _path = _folder.File("K-014.json");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_red_flag_is_heard_when_the_clock_was_set_back()
    {
        Assert.Equal(0, Visit(March, Clear).Code);

        var (code, _, error) = Visit(March.AddYears(-1), Flagged);

        Assert.Equal(0, code);
        Assert.Contains("A visit is dated 2026-03-09, after today, which is 2025-03-09 by the clock.", error, StringComparison.Ordinal);
        Assert.Single(Stops());
    }

    [Fact]
    public void A_day_that_has_not_come_is_not_taken_from_a_script()
    {
        var (code, _, error) = Visit(March, Clear, "--date", "2036-03-09");

        Assert.Equal(2, code);
        Assert.Contains("2036-03-09 is after today", error, StringComparison.Ordinal);
        Assert.False(File.Exists(_path));
    }

    [Fact]
    public void One_wrong_year_does_not_rule_for_ever()
    {
        // The clock was ten years ahead once.
        Assert.Equal(0, Visit(March.AddYears(10), Flagged).Code);
        Assert.Single(Stops());

        Assert.Equal(0, Visit(March, Clear).Code);
        Assert.Empty(Stops());
        Assert.Equal(0, Visit(March.AddDays(7), Clear, "--date", "2026-03-16").Code);
        Assert.Equal(0, Cli.RunAt(March.AddDays(8), "1\nunknown\nunknown\nno\nyes\n88\n", "trial", _path).Code);
    }

    [Fact]
    public void An_earlier_day_is_asked_about_and_a_red_flag_of_it_is_still_heard()
    {
        Visit(March, Clear);
        Assert.Equal(2, Visit(March, Flagged, "--date", "2026-03-01").Code);

        Assert.Equal(0, Visit(March, Flagged, "--date", "2026-03-01", "--late").Code);

        Assert.Single(Stops());
        Assert.Contains("A red flag was written down afterwards, for the visit of 2026-03-01.", Cli.Run("", "rank", _path).Output, StringComparison.Ordinal);

        // A visit after it settles the matter.
        Assert.Equal(0, Visit(March.AddDays(1), Clear).Code);
        Assert.Empty(Stops());
        var stored = new ProfileStore(BuiltIn.Questions()).Open(_path).Value!.Profile;
        Assert.Equal([9, 1, 10], stored.Sessions.Select(s => s.Date.Day));
        Assert.Equal([1, 9, 10], stored.InTime.Select(s => s.Date.Day));
    }

    [Fact]
    public void A_late_visit_hides_nothing_of_the_latest_one()
    {
        var answers = Answers.None.With(QuestionIds.Stature, new(new AnswerValue.Number(170, "cm"), HowObtained.Measured));
        var late = new Session(new(2026, 1, 5), Depth.Quick, answers.With(QuestionIds.Stature, new(new AnswerValue.Number(150, "cm"), HowObtained.Measured))) { IsLate = true };
        var profile = new Profile("K-014", [new(new(2026, 3, 9), Depth.Quick, answers), late]);

        Assert.Equal(1.7, profile.Latest.Answers.Si(QuestionIds.Stature));
        Assert.Equal(new DateOnly(2026, 3, 9), profile.Latest.Date);
    }

    [Theory]
    [InlineData("2026-03-09", null, null)]
    [InlineData("2026-03-10", null, DayDoubt.AfterToday)]
    [InlineData("2026-03-09", "2026-03-09", null)]
    [InlineData("2026-03-08", "2026-03-09", DayDoubt.Earlier)]
    [InlineData("2026-03-09", "2036-03-09", DayDoubt.LaterVisit)]
    public void A_day_is_doubted_for_a_reason(string day, string? last, DayDoubt? expected)
    {
        var profile = last is null ? null : new Profile("K-014", [new(DateOnly.Parse(last, System.Globalization.CultureInfo.InvariantCulture), Depth.Quick, Answers.None)]);

        Assert.Equal(expected, VisitDay.Doubt(DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture), new(2026, 3, 9), profile)?.Kind);
    }

    private (int Code, string Output, string Error) Visit(DateTimeOffset now, string typed, params string[] more) =>
        Cli.RunAt(now, typed, ["assess", "--linear", "--save", _path, "--person", "K-014", .. more]);

    private List<JsonElement> Stops()
    {
        using var document = JsonDocument.Parse(Cli.Run("", "rank", _path, "--format", "json").Output);
        return [.. document.RootElement[0].GetProperty("stop").EnumerateArray().Select(e => e.Clone())];
    }
}
