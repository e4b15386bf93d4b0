using System.Globalization;
using System.Text.Json.Nodes;

namespace ToiletAid.Acceptance.Tests.Stock;

public sealed class StockCheckTests
{
    private static readonly string BuiltIn = File.ReadAllText(Repository.Path("src", "ToiletAid.App", "Knowledge", "aids.json"));

    /// <summary>What is changed in a good file with the long clamp alone (member path, JSON or nothing to remove it), where it is told and what.</summary>
    public static TheoryData<string, string?, string, string> Faults => new()
    {
        { "format", "2", "at format: ", "2 is not a format that this program reads, use 1" },
        { "format", null, "", "format is missing, add it" },
        { "extra", "1", "at extra: ", "extra is not known here, use format, aids, addOns, prices, basis, source" },
        { "addOns", null, "", "addOns is missing, add it" },
        { "aids", "{}", "at aids: ", "{} should be a list in square brackets" },
        { "aids.0", "7", "at aids[0]: ", "7 should be an aid in braces" },
        { "aids.0.id", "\"Long Clamp\"", "at aids[0].id: ", "an id has lower-case words with hyphens" },
        { "aids.0.id", "\"\"", "at aids[0].id: ", "id is empty, write it" },
        { "aids.0.name", "\" \"", "at aids[0].name: ", "name is empty, write it" },
        { "aids.0.colour", "\"blue\"", "at aids[0].colour: ", "colour is not known here, use id, name" },
        { "aids.0.method", "\"scrub\"", "at aids[0].method: ", "scrub is not known here, use wipe, wash, wash-and-dry or helper" },
        { "aids.0.length", null, "at aids[0]: ", "length is missing, add it" },
        { "aids.0.length.value", "380", "at aids[0].length: ", "380 centimetres is out of range for length, which is 0 to 1.5 metres" },
        { "aids.0.length.low", "40", "at aids[0].length: ", "low 40 and high 45 must enclose value 38" },
        { "aids.0.length.high", "30", "at aids[0].length: ", "low 33 and high 30 must enclose value 38" },
        { "aids.0.length.unit", "\"kg\"", "at aids[0].length.unit: ", "kg is not a unit for this, use m, cm, mm, in or ft" },
        { "aids.0.length.unit", "\"hand\"", "at aids[0].length.unit: ", "hand is not a unit for this" },
        { "aids.0.length.basis", "\"computed\"", "at aids[0].length.basis: ", "computed is not known here, use published, common-practice, estimate, from-memory, decision or measured" },
        { "aids.0.length.basis", "\"guess\"", "at aids[0].length.basis: ", "guess is not known here, use published, common-practice, estimate, from-memory, decision or measured" },
        { "aids.0.length.source", null, "at aids[0].length: ", "source is missing, add it" },
        { "aids.0.length.value", "\"long\"", "at aids[0].length.value: ", "long should be a number" },
        { "aids.0.length.value", "1e999", "at aids[0].length.value: ", "1e999 should be a number" },
        { "aids.0.length.about", "1", "at aids[0].length.about: ", "about is not known here" },
        { "aids.0.length", "38", "at aids[0].length: ", "38 should be an object with value, unit, basis and source" },
        { "aids.0.mass.value", "-1", "at aids[0].mass: ", "low 150 and high 300 must enclose value -1" },
        { "aids.0.mass.high", "30000", "at aids[0].mass: ", "30000 grams is out of range for mass, which is 0 to 10 kilograms" },
        { "aids.0.coverage.high", "1.2", "at aids[0].coverage: ", "1.2 is out of range for coverage, which is 0 to 1" },
        { "aids.0.steps", "2.5", "at aids[0].steps: ", "2.5 should be a whole number" },
        { "aids.0.steps", "99", "at aids[0].steps: ", "99 is out of range for steps, which is 0 to 50" },
        { "aids.0.materials", "[\"velvet\"]", "at aids[0].materials[0]: ", "velvet is not a material that an allergy is asked about, use silicone, latex or nickel" },
        { "aids.0.approaches", "[]", "at aids[0]: ", "needs an approach, add behind, front or side" },
        { "aids.0.approaches", "[\"above\"]", "at aids[0].approaches[0]: ", "above is not known here, use behind, front or side" },
        { "aids.0.postures", "[]", "at aids[0]: ", "it has no posture" },
        { "aids.0.postures", "[\"seated\",\"seated\"]", "at aids[0].postures[1]: ", "seated appears twice" },
        { "aids.0.addOns", "[\"third-hand\"]", "at aids[0].addOns[0]: ", "third-hand is not an add-on of this file or built in, use hand-cuff" },
        { "aids.0.companions", "[\"towel\"]", "at aids[0].companions[0]: ", "towel is not an aid of this file or built in" },
        { "aids.0.operations.0.force.value", "9000", "at aids[0].operations[0].force: ", "must enclose value 9000" },
        { "aids.0.operations.0.force.high", "9000", "at aids[0].operations[0].force: ", "9000 newtons is out of range for force, which is 0 to 500 newtons" },
        { "aids.0.operations.0.grasps", "[]", "at aids[0].operations[0]: ", "no grasp can do it" },
        { "aids.0.operations.0.hands", "3", "at aids[0].operations[0].hands: ", "3 is out of range for hands, which is 1 to 2" },
        { "aids.0.operations.0.againstTheBody", "\"yes\"", "at aids[0].operations[0].againstTheBody: ", "yes should be true or false" },
        { "aids.0.paper.hold", "\"wrap\"", "at aids[0].paper: ", "headGirth is missing, add it" },
        { "aids.0.paper.sheets", "0", "at aids[0].paper.sheets: ", "0 is out of range for sheets, which is 1 to 60" },
        { "aids.0.method", "\"wash\"", "at aids[0]: ", "an aid that washes needs water, add it" },
        { "prices", "3", "at prices: ", "3 should be an object with roll, wipe or waterCubicMetre" },
        { "prices", "{\"soap\":1}", "at prices.soap: ", "soap is not known here, use roll, wipe, waterCubicMetre" },
        { "prices", "{\"roll\":0.4}", "at prices.roll: ", "0.4 should be an object with value, unit, basis and source" },
        { "prices", "{\"wipe\":{\"value\":-1,\"unit\":\"money\",\"basis\":\"decision\",\"source\":\"invoice\"}}", "at prices.wipe: ", "-1 is out of range for wipe, which is 0 to" },
        { "aids.0.upkeep", null, "at aids[0]: ", "upkeep is missing, add it" },
        { "aids.0.variants.0.id", "\"Long one\"", "at aids[0].variants[0].id: ", "an id has lower-case words with hyphens" },
        { "aids.0.variants.0.has", null, "at aids[0].variants[0]: ", "has is missing, add it" },
        { "aids.0.variants.0.weight", "1", "at aids[0].variants[0].weight: ", "weight is not known here, use id, name, has" },
        { "aids.0.variants.0.length", "48", "at aids[0].variants[0].length: ", "48 should be an object with value, unit, basis and source" },
        { "aids.0.variants.1.tip", "\"woolly\"", "at aids[0].variants[1].tip: ", "woolly is not known here" },
        { "aids.0.variants.1.id", "\"extension-piece\"", "at aids[0].variants[1]: ", "extension-piece appears twice among the variants" },
        { "aids.0.variants.0", "{\"id\":\"same\",\"name\":\"Same\",\"has\":\"as it is\"}", "at aids[0].variants[0]: ", "it differs in nothing from its kind" },
        { "aids.0.variants.0", "7", "at aids[0].variants[0]: ", "7 should be a variant in braces" },
        { "aids.0.upkeep.price.value", "-3", "at aids[0].upkeep.price: ", "must enclose value -3" },
    };

    /// <summary>What counts as one with a kind must name one.</summary>
    public static TheoryData<string, string?, string, string> FaultsOfArticles => new()
    {
        { "aids.0.articleOf", "\"long-clam\"", "at aids[0].articleOf: ", "long-clam is not a built-in kind, use one of by-hand, long-clamp, " },
        { "aids.0.articleOf", "7", "at aids[0].articleOf: ", "7 is not a built-in kind" },
        { "aids.0.articleOf", "\"tongs\"", "at aids[0].articleOf: ", "long-clamp is a kind itself and no article of one, leave articleOf out or give another id" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    [MemberData(nameof(FaultsOfArticles))]
    public void A_fault_is_told_in_one_sentence_with_place_and_fix(string member, string? json, string place, string message)
    {
        using var folder = new TempFolder();
        string path = folder.File("stock.json", Changed(member, json));

        var (code, output, error) = Cli.Run("", "aids", "check", path);

        Assert.Equal(3, code);
        Assert.Empty(output);
        string told = Assert.Single(error.TrimEnd('\n').Split('\n'), line => line.Contains(message, StringComparison.Ordinal));
        Assert.StartsWith(path, told, StringComparison.Ordinal);
        Assert.Contains(place, told, StringComparison.Ordinal);
        Assert.EndsWith(".", told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_built_in_catalogue_is_good() =>
        Assert.Equal((0, ""), Result(BuiltIn));

    [Fact]
    public void What_the_list_prints_as_json_is_good() =>
        Assert.Equal((0, ""), Result(Cli.Run("", "aids", "--format", "json").Output));

    [Fact]
    public void The_unchanged_sample_of_these_tests_is_good() =>
        Assert.Equal((0, ""), Result(Changed("format", "1")));

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var file = JsonNode.Parse(Changed("format", "1"))!;
        file["aids"]![0]!["id"] = "Long Clamp";
        file["aids"]![0]!["coverage"]!["high"] = 7;
        file["aids"]![0]!["postures"] = new JsonArray();

        var (code, error) = Result(file.ToJsonString());

        Assert.Equal(3, code);
        Assert.Equal(3, error.TrimEnd('\n').Split('\n').Length);
    }

    [Fact]
    public void An_id_that_stands_twice_is_told()
    {
        var file = JsonNode.Parse(Changed("format", "1"))!;
        file["aids"]!.AsArray().Add(file["aids"]![0]!.DeepClone());

        Assert.Contains("aids[1]: long-clamp appears twice, keep one of them", Result(file.ToJsonString()).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"format\":1,", "line 1, column ")]
    [InlineData("{\"format\":1,\"format\":1,\"aids\":[],\"addOns\":[]}", "a member appears twice")]
    [InlineData("[]", "a catalogue is an object in braces")]
    [InlineData("", "it is empty or not a regular file")]
    public void A_file_that_is_no_catalogue_is_told(string text, string message)
    {
        var (code, error) = Result(text);

        Assert.Equal(3, code);
        Assert.Contains(message, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void A_missing_file_and_a_folder_are_told()
    {
        using var folder = new TempFolder();

        Assert.Contains("there is no such file", Cli.Run("", "aids", "check", folder.File("none.json")).Error, StringComparison.Ordinal);
        Assert.Contains("it is a folder", Cli.Run("", "aids", "check", folder.Path).Error, StringComparison.Ordinal);
    }

    internal static string Changed(string member, string? json)
    {
        var file = JsonNode.Parse(BuiltIn)!;
        var clamp = file["aids"]!.AsArray().Single(a => a!["id"]!.GetValue<string>() == "long-clamp")!.DeepClone();
        file["aids"] = new JsonArray(clamp);
        file["addOns"] = new JsonArray();
        string[] path = member.Split('.');
        var at = path[..^1].Aggregate(file, (node, step) => int.TryParse(step, CultureInfo.InvariantCulture, out int i) ? node[i]! : node[step]!);
        if (int.TryParse(path[^1], CultureInfo.InvariantCulture, out int index))
        {
            at[index] = JsonNode.Parse(json!);
        }
        else if (json is null)
        {
            at.AsObject().Remove(path[^1]);
        }
        else
        {
            at[path[^1]] = JsonNode.Parse(json);
        }

        return file.ToJsonString();
    }

    private static (int Code, string Error) Result(string text)
    {
        using var folder = new TempFolder();
        var (code, _, error) = Cli.Run("", "aids", "check", folder.File("stock.json", text));
        return (code, error);
    }
}
