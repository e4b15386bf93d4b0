using System.Globalization;
using System.Text.Json;
using ToiletAid.App.Documents;

namespace ToiletAid.Terminal.Tests.Browser;

/// <summary>The papers in a real browser: an accessibility checker, both zooms, and what comes out of the printer.</summary>
public sealed class BrowserTests(ITestOutputHelper output)
{
    private const int MostSheetPages = 2;
    private const int Simulated = 10;
    [Fact]
    public void Papers_are_accessible_flow_at_any_zoom_and_print_on_the_pages_they_should()
    {
        string modules = Modules();
        using var folder = new TempFolder();
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            foreach (string kind in (string[])["note", "person", "helper"])
            {
                foreach (string language in English.Tags)
                {
                    folder.File($"{name}.{kind}.{language}.html", HtmlDocument.Write(Papers.Of(name, kind, language)));
                }
            }
        }

        string[] simulated = Cli.Run("", "simulate", "--people", Text(Simulated), "--depth", "measured", "--seed", "24").Output.TrimEnd().Split('\n');
        for (int i = 0; i < Simulated; i++)
        {
            string profile = folder.File($"simulated-{i}.json", simulated[i]);
            folder.File($"simulated-{i}.note.html", Cli.Run("", "report", profile, "--kind", "note", "--format", "html").Output);
            folder.File($"simulated-{i}.words.html", Cli.Run("", "report", profile, "--kind", "sheet", "--sheet", "words", "--format", "html").Output);
            folder.File($"simulated-{i}.pictures.html", Cli.Run("", "report", profile, "--kind", "sheet", "--sheet", "pictures", "--format", "html").Output);
        }

        using var seen = JsonDocument.Parse(Run("node", Script("look.cjs"), modules, folder.Path));
        int most = 0, mostOfNotes = 0;
        foreach (var page in seen.RootElement.EnumerateArray())
        {
            string name = page.GetProperty("name").GetString()!;
            Assert.Empty(page.GetProperty("violations").EnumerateArray().Select(v => $"{name}, {v.GetString()}"));
            Assert.Empty(page.GetProperty("sideways").EnumerateArray().Select(v => $"{name}, {v.GetString()}"));
            Assert.Equal(1, page.GetProperty("requests").GetInt32()); // the file itself
            Assert.InRange(page.GetProperty("rules").GetInt32(), 5, 200);
            int pages = Math.Max(Pages(folder.File(name + ".A4.pdf")), Pages(folder.File(name + ".Letter.pdf")));
            output.WriteLine($"{name}: {pages} pages");
            foreach (string size in name.Contains(".note", StringComparison.Ordinal) ? (string[])["A4", "Letter"] : [])
            {
                // The page to sign is one, whatever paper it is printed on.
                Assert.StartsWith("Appendix", Run("pdftotext", "-f", "2", "-l", "2", folder.File($"{name}.{size}.pdf"), "-"), StringComparison.Ordinal);
            }

            most = Math.Max(most, name.Contains(".note", StringComparison.Ordinal) ? 0 : pages);
            mostOfNotes = Math.Max(mostOfNotes, name.Contains(".note", StringComparison.Ordinal) ? pages : 0);
        }

        output.WriteLine($"{seen.RootElement.GetArrayLength()} papers, sheets at most {most} pages, notes at most {mostOfNotes}");
        Assert.Equal((DemoPeople.Names.Count * 3 * English.Tags.Count) + (3 * Simulated), seen.RootElement.GetArrayLength());
        Assert.InRange(most, 1, MostSheetPages);
    }

    /// <summary>A table with headers and drawings with words, alone, for two kinds and for the most kinds with a person.</summary>
    [Fact]
    public void Kinds_side_by_side_hold_for_axe_and_do_not_scroll_sideways()
    {
        string modules = Modules();
        using var folder = new TempFolder();
        folder.File("one.html", Cli.Run("", "explain", "tongs", "--format", "html").Output);
        folder.File("two.html", Cli.Run("", "explain", "seat-wash-dry", "spray-wash", "--language", "en-US", "--format", "html").Output);
        folder.File("four.html", Cli.Run("", "explain", "short-soft", "long-clamp", "helper-wipe", "hose-wash", DemoPeople.File("k-014-stiff-shoulder"), "--format", "html").Output);
        folder.File("stop.html", Cli.Run("", "explain", "tongs", DemoPeople.File("w-701-red-flag"), "--format", "html").Output);

        using var seen = JsonDocument.Parse(Run("node", Script("look.cjs"), modules, folder.Path));
        Assert.Equal(4, seen.RootElement.GetArrayLength());
        foreach (var page in seen.RootElement.EnumerateArray())
        {
            string name = page.GetProperty("name").GetString()!;
            Assert.Empty(page.GetProperty("violations").EnumerateArray().Select(v => $"{name}, {v.GetString()}"));
            Assert.Empty(page.GetProperty("sideways").EnumerateArray().Select(v => $"{name}, {v.GetString()}"));
            Assert.Equal(1, page.GetProperty("requests").GetInt32());
            output.WriteLine($"{name}: {Pages(folder.File(name + ".A4.pdf"))} pages");
        }
    }

    [Fact]
    public void The_browser_finds_what_is_wrong_with_a_bad_page()
    {
        string modules = Modules();
        using var folder = new TempFolder();
        folder.File("bad.html", "<!DOCTYPE html><html><head><title>x</title></head><body><main><h1>x</h1><svg role=\"img\" width=\"2000\" height=\"9\"></svg></main></body></html>");

        using var seen = JsonDocument.Parse(Run("node", Script("look.cjs"), modules, folder.Path));
        string[] violations = [.. seen.RootElement[0].GetProperty("violations").EnumerateArray().Select(v => v.GetString()!)];

        Assert.Contains(violations, v => v.StartsWith("html-has-lang", StringComparison.Ordinal));
        Assert.Contains(violations, v => v.StartsWith("svg-img-alt", StringComparison.Ordinal));
        Assert.Equal(["full", "zoomed"], seen.RootElement[0].GetProperty("sideways").EnumerateArray().Select(s => s.GetString()));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static int Pages(string pdf) =>
        int.Parse(Run("pdfinfo", pdf).Split('\n').Single(l => l.StartsWith("Pages:", StringComparison.Ordinal))["Pages:".Length..], CultureInfo.InvariantCulture);

    private static string Script(string name) => NodeModules.Script("Browser", name);

    private static string Modules()
    {
        Tools.Need("chromium", "pdfinfo");
        return NodeModules.Of("Browser", "axe-core", "axe.min.js");
    }

    private static string Run(string program, params string[] arguments) => NodeModules.Run(program, arguments);
}
