using System.Xml.Linq;
using ToiletAid.App.Files;
using ToiletAidTui.Host;

namespace ToiletAid.Acceptance.Tests.Pictures;

/// <summary>One kind of aid, said and drawn.</summary>
public sealed class AidPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Kinds => [.. BuiltIn.Aids().Aids.Select(a => a.Id)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_is_drawn_with_the_words_that_are_said(string id)
    {
        using var folder = new TempFolder();
        string file = Path.Combine(folder.Path, "aid.svg");
        var (code, output, error) = Cli.Run("", "aids", "--aid", id, "--picture", file);
        var root = XDocument.Load(file).Root!;

        Assert.Equal((ExitCode.Good, string.Empty), (code, error));
        Assert.Equal(id, root.Descendants().Single(e => e.Attribute("data-aid") is not null).Attribute("data-aid")!.Value);
        Assert.NotEmpty(root.Element(Svg + "title")!.Value);
        Assert.Contains($"Its shape: {root.Element(Svg + "desc")!.Value}", output, StringComparison.Ordinal);
        Assert.StartsWith(id + ". ", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A picture shows one kind of aid, name it with --aid", "--picture", "x.svg")]
    [InlineData("stick is not a kind of aid, use one of by-hand, ", "--aid", "stick")]
    [InlineData("JSON is the whole built-in file", "--format", "json", "--aid", "tongs")]
    public void What_cannot_be_drawn_is_told_in_one_sentence(string says, params string[] args)
    {
        var (code, output, error) = Cli.Run("", ["aids", .. args]);
        Assert.Equal((ExitCode.WrongUsage, string.Empty), (code, output));
        Assert.Contains(says, Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }
}
