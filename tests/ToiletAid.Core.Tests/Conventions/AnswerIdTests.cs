using System.Text.RegularExpressions;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Conventions;

/// <summary>Ids of questions and options in code are those of the data: a misspelt one would read as not answered, and what rests on it would be lost unseen.</summary>
public sealed partial class AnswerIdTests
{
    private static readonly string[] Projects = ["ToiletAid.Core", "ToiletAid.App"];

    [Fact]
    public void Every_question_and_option_that_code_asks_for_exists()
    {
        string[] sources = [.. Projects.SelectMany(p => Directory.EnumerateFiles(Repository.Path("src", p), "*.cs", SearchOption.AllDirectories)).Select(File.ReadAllText)];

        Assert.InRange(sources.Sum(s => Asked().Count(s)), 60, int.MaxValue);
        Assert.Empty(sources.SelectMany(Wrong));
    }

    [Theory]
    [InlineData("known.Choice(\"skin\") == \"fragile\"", 0)]
    [InlineData("known.Choice(\"skinn\") == \"fragile\"", 1)]
    [InlineData("known.Choice(\"skin\") == \"fragil\"", 1)]
    [InlineData("known.Choice(\"reach-behind\") is \"tailbone\" or \"waist\"", 1)]
    [InlineData("c.Is(\"feeling\", \"reduced\", \"nothing\")", 1)]
    [InlineData("c.Has(\"precautions\", \"sternal\") | c.Has(\"precautions\", \"stern\")", 1)]
    [InlineData("known.Knows(\"gripp\") && known.Si(\"mas\") > 0", 2)]
    public void A_misspelt_one_is_found(string source, int wrong) => Assert.Equal(wrong, Wrong(source).Count());

    private static IEnumerable<string> Wrong(string source)
    {
        foreach (Match asked in Asked().Matches(source))
        {
            string id = asked.Groups["question"].Value;
            Question? question = Cases.Knowledge.Questions.Find(id);
            if (question is null)
            {
                yield return $"no question {id}: {asked.Value}";
            }

            foreach (Capture option in asked.Groups["option"].Captures)
            {
                if (question is not null && question.FindOption(option.Value) is null)
                {
                    yield return $"{id} has no option {option.Value}: {asked.Value}";
                }
            }
        }
    }

    [GeneratedRegex("""
        \.(?:Choice|Many|Si|Knows)\("(?<question>[a-z-]+)"\)(?:\s(?:==|!=|is|is\snot)\s"(?<option>[^"]+)"(?:\sor\s"(?<option>[^"]+)")*)?
        |\.(?:Is|Has)\("(?<question>[a-z-]+)"(?:,\s"(?<option>[^"]+)")+\)
        |\b(?:known|filled|answers|Known|Answers)\["(?<question>[a-z-]+)"\]
        """, RegexOptions.ExplicitCapture | RegexOptions.IgnorePatternWhitespace, 10_000)]
    private static partial Regex Asked();
}
