using System.Xml.Linq;

namespace ToiletAid.Acceptance.Tests.Readers;

/// <summary>What the program says about itself to those who listen or feel.</summary>
public sealed class AccessibilityTopicTests
{
    [Fact]
    public void The_topic_is_there_as_lines_and_as_a_page()
    {
        var (code, text, _) = Cli.Run(string.Empty, "accessibility");
        Assert.Equal(0, code);
        string page = Cli.Run(string.Empty, "accessibility", "--format", "html").Output;
        var body = XElement.Parse(page[page.IndexOf("<body>", StringComparison.Ordinal)..page.IndexOf("</html>", StringComparison.Ordinal)]);
        Assert.Single(body.Elements("h1"));
        Assert.Equal(body.Elements("h2").Count(), body.Elements("ul").Count());
        Assert.All(body.Descendants("li"), item => Assert.Contains(item.Value, text, StringComparison.Ordinal));
        Assert.All(body.Elements("h2"), heading => Assert.Contains($"{heading.Value}:\n", text, StringComparison.Ordinal));
    }
}
