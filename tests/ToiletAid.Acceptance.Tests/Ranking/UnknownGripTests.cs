using System.Text.Json;

namespace ToiletAid.Acceptance.Tests.Ranking;

public sealed class UnknownGripTests
{
    private const string AnswersText =
        """
        "age":{"value":80,"how":"reported"},
        "sex":{"value":"female","how":"reported"},
        "grasp":{"value":"whole-hand","how":"observed"},
        "dexterity":{"value":"usual","how":"observed"},
        "helper":{"value":"sometimes","how":"observed"},
        "skin":{"value":"sound","how":"observed"},
        "method":{"value":"dry","how":"reported"},
        "feeling":{"value":"usual","how":"reported"},
        "paper-touch":{"value":"avoid","how":"reported"},
        "fixtures":{"value":"no","how":"observed"},
        "socket":{"value":"no","how":"observed"},
        "reach-behind":{"value":"outer-buttock","how":"observed"},
        "priorities":{"value":["handling"],"how":"reported"}
        """;

    [Fact]
    public void A_first_place_that_hangs_on_an_unmeasured_grip_says_what_would_come_first()
    {
        var (code, output, _) = Cli.Run(Profile(""), "rank", "-");

        Assert.Equal(0, code);
        Assert.Contains("\nGrip was not measured.\nWith a weak hand for that age, 6.7 kilograms-force, that is 66 newtons, the first place would be extending handle with clamp tip", output, StringComparison.Ordinal);
        Assert.DoesNotContain("With a strong hand", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_would_come_first_does_come_first_when_that_grip_is_measured()
    {
        var dependence = First(Profile("")).GetProperty("gripDependence");
        Assert.False(dependence.GetProperty("firstPlaceStays").GetBoolean());

        foreach (string hand in (string[])["Weak", "Strong"])
        {
            string newtons = dependence.GetProperty(char.ToLowerInvariant(hand[0]) + hand[1..] + "Newtons").GetRawText();
            var first = First(Profile($"\"grip\":{{\"value\":{newtons},\"unit\":\"N\",\"how\":\"measured\"}},"));
            Assert.Equal(dependence.GetProperty("firstWith" + hand).GetString(), first.GetProperty("plan").GetProperty("aid").GetString());
            Assert.Equal(JsonValueKind.Null, first.GetProperty("gripDependence").ValueKind);
        }
    }

    /// <summary>A woman of 80 for whom handling counts most, at a toilet where nothing may be fitted.</summary>
    private static string Profile(string more) =>
        "{\"format\":1,\"person\":\"P-65\",\"sessions\":[{\"date\":\"2026-03-09\",\"depth\":\"full\",\"answers\":{" + more + AnswersText.ReplaceLineEndings(string.Empty) + "}}]}\n";

    private static JsonElement First(string profile)
    {
        var (code, output, error) = Cli.Run(profile, "rank", "-", "--format", "ndjson");
        Assert.Equal((0, ""), (code, error));
        using var document = JsonDocument.Parse(output);
        return document.RootElement.GetProperty("shortlist")[0].Clone();
    }
}
