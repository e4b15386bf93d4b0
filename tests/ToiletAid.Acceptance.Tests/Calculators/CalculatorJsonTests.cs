using System.Text.Json;

namespace ToiletAid.Acceptance.Tests.Calculators;

public sealed class CalculatorJsonTests
{
    private const double NewtonsInKilogramForce = 9.80665;

    /// <summary>Tomkinson et al. 2025, J Sport Health Sci 14:101014, typed in again: median kg of the band and of the one before it. Bands hold at their middle, so at the
    /// whole year half a year before a middle nine tenths of the way are gone.</summary>
    [Theory]
    [InlineData("male", 62, 44.4, 42.4)]
    [InlineData("female", 67, 26.2, 25.0)]
    [InlineData("female", 82, 22.1, 20.4)]
    [InlineData("male", 77, 37.7, 35.1)]
    public void The_median_is_that_of_the_published_table(string sex, int age, double before, double here)
    {
        var grip = Run("grip", "--age", $"{age}", "--sex", sex).GetProperty("grip");

        Assert.Equal(((0.1 * before) + (0.9 * here)) * NewtonsInKilogramForce, grip.GetProperty("normMedianNewtons").GetDouble(), 1e-3);
        Assert.False(grip.GetProperty("outsideTable").GetBoolean());
    }

    [Fact]
    public void A_measured_grip_has_percentile_and_z_score_and_no_measured_grip_has_none()
    {
        var measured = Run("grip", "--age", "74", "--sex", "female", "--grip", "11 kg").GetProperty("grip");
        var unknown = Run("grip", "--age", "74", "--sex", "female").GetProperty("grip");

        Assert.Equal(11 * NewtonsInKilogramForce, measured.GetProperty("measuredNewtons").GetDouble(), 1e-4);
        Assert.InRange(measured.GetProperty("percentile").GetDouble(), 1, 5);
        Assert.InRange(measured.GetProperty("zScore").GetDouble(), -2.4, -1.7);
        Assert.All(["measuredNewtons", "percentile", "zScore"], name => Assert.Equal(JsonValueKind.Null, unknown.GetProperty(name).ValueKind));
    }

    [Fact]
    public void The_norm_itself_is_at_percentile_fifty()
    {
        double median = Run("grip", "--age", "50").GetProperty("grip").GetProperty("normMedianNewtons").GetDouble();

        var grip = Run("grip", "--age", "50", "--grip", FormattableString.Invariant($"{median} N")).GetProperty("grip");

        Assert.Equal(50, grip.GetProperty("percentile").GetDouble(), 0.01);
        Assert.Equal(0, grip.GetProperty("zScore").GetDouble(), 0.001);
    }

    [Fact]
    public void An_age_outside_the_table_is_flagged() =>
        Assert.True(Run("grip", "--age", "17").GetProperty("grip").GetProperty("outsideTable").GetBoolean());

    /// <summary>2010 ADA Standards 309.4: 5 pounds, 22.2 N, without tight grasp, pinch or twist.</summary>
    [Theory]
    [InlineData("long-clamp", true)]
    [InlineData("short-soft", false)]
    public void Letting_go_is_held_against_the_one_handed_line(string aid, bool meets)
    {
        var told = Run("grip", "--age", "74", "--aid", aid).GetProperty("aid");
        double force = told.GetProperty("operations").EnumerateArray().Single(o => o.GetProperty("operation").GetString() == "release").GetProperty("demandNewtons").GetDouble();

        Assert.Equal(meets, force <= 22.2);
        Assert.Equal(meets, told.GetProperty("releaseMeetsReferenceLine").GetBoolean());
    }

    /// <summary>Common practice: four sheets folded in half twice are one sheet long and four layers thick; eight are two sheets long.</summary>
    [Theory]
    [InlineData(4, 1)]
    [InlineData(8, 2)]
    public void Sheets_folded_twice_have_four_layers(int sheets, int sheetsLong)
    {
        double sheet = Strip(1, 0).GetProperty("lengthMetres").GetDouble();

        var strip = Strip(sheets, 2);

        Assert.Equal(4, strip.GetProperty("layers").GetInt32());
        Assert.Equal(sheetsLong * sheet, strip.GetProperty("lengthMetres").GetDouble(), 1e-4);
    }

    [Fact]
    public void Wraps_are_strip_over_girth_and_a_strip_that_is_too_short_does_not_hold()
    {
        var good = Run("paper", "--sheets", "8", "--folds", "2", "--girth", "9 cm");
        var poor = Run("paper", "--sheets", "4", "--folds", "2", "--girth", "9 cm");

        Assert.Equal(good.GetProperty("strip").GetProperty("lengthMetres").GetDouble() / 0.09, good.GetProperty("wraps").GetDouble(), 1e-3);
        Assert.True(good.GetProperty("holds").GetBoolean());
        Assert.False(poor.GetProperty("holds").GetBoolean());
        Assert.True(poor.GetProperty("needed").GetProperty("strip").GetProperty("sheets").GetInt32() > 4);
    }

    /// <summary>By hand: hot share (37 - 10) / (60 - 10) = 0.54 of 180 ml is 97.2 ml; 180 ml at 4 ml/s last 45 s.</summary>
    [Fact]
    public void Water_is_mixed_by_heat_balance()
    {
        var water = Run("water", "--reservoir", "180 ml", "--flow", "4 ml/s", "--hot", "60 C", "--cold", "10 C", "--target", "37 C", "--feeling", "none");

        Assert.Equal(45, water.GetProperty("gentleSecondsPerFilling").GetDouble(), 1e-3);
        Assert.Equal(97.2, water.GetProperty("mix").GetProperty("hotMillilitres").GetDouble(), 1e-3);
        Assert.Equal(82.8, water.GetProperty("mix").GetProperty("coldMillilitres").GetDouble(), 1e-3);
        Assert.Equal(37, water.GetProperty("mix").GetProperty("celsius").GetDouble(), 1e-3);
    }

    /// <summary>38 C for bidets by the UK valve scheme, 37 C where feeling is poor or not known (decision).</summary>
    [Theory]
    [InlineData("usual", 38)]
    [InlineData("reduced", 37)]
    [InlineData("none", 37)]
    [InlineData(null, 37)]
    public void No_mixture_is_above_the_limit_whatever_is_wished(string? feeling, double limit)
    {
        for (int wish = 20; wish <= 100; wish += 10)
        {
            var water = Run("water", ["--aid", "squeeze-wash", "--target", $"{wish} C", .. feeling is null ? Array.Empty<string>() : ["--feeling", feeling]]);
            Assert.Equal(limit, water.GetProperty("limitCelsius").GetDouble());
            Assert.InRange(water.GetProperty("mix").GetProperty("celsius").GetDouble(), 0, limit);
            Assert.InRange(water.GetProperty("mix").GetProperty("celsiusOfParts").GetDouble(), 0, limit);
            Assert.Equal(wish > limit, water.GetProperty("mix").GetProperty("loweredToLimit").GetBoolean());
        }
    }

    /// <summary>Rows of the burn table, adults: 48 C 15 minutes, 51 C 2 minutes, 60 C 3 seconds.</summary>
    [Theory]
    [InlineData(48, 900)]
    [InlineData(51, 120)]
    [InlineData(60, 3)]
    public void A_temperature_that_burns_shows_the_time_of_the_table(int celsius, double seconds)
    {
        var burns = Run("water", "--aid", "spray-wash", "--target", $"{celsius} C", "--hot", "60 C").GetProperty("burns").EnumerateArray().ToList();

        Assert.Equal(seconds, burns.Single(b => b.GetProperty("celsius").GetDouble() == celsius).GetProperty("seconds").GetDouble(), 1e-3);
    }

    [Fact]
    public void Reach_has_the_documented_shape_and_bands_in_order()
    {
        var reach = Run("reach", "--stature", "172 cm", "--mass", "70 kg", "--shoulder-extension", "15", "--internal-rotation", "20", "--draws", "100");

        Assert.Equal(["posture", "draws", "seed", "handReachMetres", "outsideSurvey", "picture", "approaches", "contradictions"], reach.EnumerateObject().Select(p => p.Name));
        var approaches = reach.GetProperty("approaches").EnumerateArray().ToList();
        Assert.Equal(["behind", "front", "side"], approaches.Select(a => a.GetProperty("approach").GetString()));
        foreach (var a in approaches.Where(a => a.GetProperty("highMetres").ValueKind == JsonValueKind.Number))
        {
            Assert.True(a.GetProperty("lowMetres").GetDouble() <= a.GetProperty("medianMetres").GetDouble());
            Assert.True(a.GetProperty("medianMetres").GetDouble() <= a.GetProperty("highMetres").GetDouble());
        }
    }

    /// <summary>Healthy adult ranges need no aid from behind (common practice), a shoulder that moves neither back nor inward does.</summary>
    [Fact]
    public void A_stiff_shoulder_needs_more_length_than_a_healthy_one()
    {
        double healthy = Behind("80", "70"), stiff = Behind("15", "20");

        Assert.True(stiff > healthy + 0.05, $"{stiff} against {healthy}");
    }

    [Fact]
    public void A_forbidden_approach_has_a_reason_and_no_length()
    {
        var behind = Run("reach", "--precautions", "sternal", "--draws", "20").GetProperty("approaches")[0];

        Assert.False(behind.GetProperty("allowed").GetBoolean());
        Assert.Equal("sternal", behind.GetProperty("forbiddenBecause").GetString());
        Assert.Equal(JsonValueKind.Null, behind.GetProperty("medianMetres").ValueKind);
    }

    [Fact]
    public void A_landmark_that_the_joints_cannot_give_is_a_contradiction()
    {
        var found = Run("reach", "--reach-behind", "waist-or-above", "--shoulder-extension", "0", "--internal-rotation", "0", "--draws", "0").GetProperty("contradictions");

        var only = Assert.Single(found.EnumerateArray());
        Assert.Equal("reach-behind", only.GetProperty("question").GetString());
        Assert.True(only.GetProperty("answerIsTooGood").GetBoolean());
    }

    [Fact]
    public void A_build_outside_the_survey_is_flagged()
    {
        Assert.True(Run("reach", "--mass", "220 kg", "--draws", "0").GetProperty("outsideSurvey").GetBoolean());
        Assert.False(Run("reach", "--mass", "70 kg", "--stature", "165 cm", "--draws", "0").GetProperty("outsideSurvey").GetBoolean());
    }

    [Fact]
    public void Units_as_people_type_them_give_the_same_result() =>
        Assert.Equal(
            Cli.Run("", "calc", "reach", "--stature", "5 ft 7 in", "--mass", "11 st", "--draws", "20", "--format", "json").Output,
            Cli.Run("", "calc", "reach", "--stature", "67 in", "--mass", "154 lb", "--draws", "20", "--format", "json").Output);

    [Fact]
    public void The_picture_is_written_whole_and_named_in_the_result()
    {
        using var folder = new TempFolder();
        string file = folder.File("reach.svg");

        var reach = Run("reach", "--stature", "172 cm", "--mass", "70 kg", "--approach", "behind", "--draws", "20", "--picture", file);

        Assert.Equal(file, reach.GetProperty("picture").GetString());
        Assert.Single(reach.GetProperty("approaches").EnumerateArray());
        var svg = System.Xml.Linq.XDocument.Load(file).Root!;
        Assert.Equal("svg", svg.Name.LocalName);
        Assert.Contains("from behind", svg.Elements().First(e => e.Name.LocalName == "title").Value, StringComparison.Ordinal);
        Assert.Equal([file], Directory.GetFiles(folder.Path));
    }

    private static double Behind(string extension, string rotation) =>
        Run("reach", "--stature", "172 cm", "--mass", "70 kg", "--shoulder-extension", extension, "--internal-rotation", rotation, "--lean", "both", "--draws", "0")
            .GetProperty("approaches")[0].GetProperty("middleMetres").GetDouble();

    private static JsonElement Strip(int sheets, int folds) => Run("paper", "--sheets", $"{sheets}", "--folds", $"{folds}").GetProperty("strip");

    private static JsonElement Run(string calculator, params string[] arguments)
    {
        var (code, output, error) = Cli.Run("", ["calc", calculator, .. arguments, "--format", "json"]);
        Assert.Equal((0, ""), (code, error));
        using var document = JsonDocument.Parse(output);
        return document.RootElement.Clone();
    }
}
