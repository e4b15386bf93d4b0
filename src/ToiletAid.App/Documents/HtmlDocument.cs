using System.Globalization;
using System.Net;
using System.Text;
using ToiletAid.App.Pictures;
using ToiletAid.App.Typed;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>A document as one HTML file: no scripts, nothing from outside, prints on A4 and Letter, and flows at any zoom.</summary>
public static class HtmlDocument
{
    // 18 point is what the clear print guidance G003 of the UK Association for Accessible Formats (2019) asks for as large print; 12 its least for print.
    private const string Style = """
        html{font-family:Arial,Helvetica,sans-serif;color:#111;background:#fff;text-align:left;overflow-wrap:break-word}
        body{max-width:42em;margin:0 auto;padding:0 .6em;line-height:1.35}
        body.large{font-size:18pt}
        body.small{font-size:12pt}
        h1{font-size:1.35em;margin:.3em 0}
        h2{font-size:1.12em;margin:.6em 0 .2em;break-after:avoid}
        h3{font-size:1em;margin:.4em 0 .1em;break-after:avoid}
        p{margin:.25em 0}
        ul,ol{margin:.2em 0;padding-left:1.7em}
        li{margin:.12em 0;break-inside:avoid}
        dl{margin:.2em 0}
        dl>div{margin:.12em 0;break-inside:avoid}
        dl.row>div{display:inline-block;margin-right:1.2em}
        dl.row .fill{width:9em}
        h2.page{break-before:page}
        h4{font-size:1em;font-style:italic;margin:.4em 0 .1em;break-after:avoid}
        dt{display:inline;font-weight:bold}
        dd{display:inline;margin:0}
        .urgent{border:.15em solid #111;padding:.3em .5em;font-weight:bold}
        .fill{display:inline-block;width:14em;max-width:100%;border-bottom:1px solid #111;height:1.1em}
        li.drawn{display:flow-root list-item}
        li.drawn svg{float:right;height:4.1em;width:auto;max-width:40%;margin:0 0 .2em .5em}
        body.small li.drawn svg{height:4.4em;max-width:45%}
        ol.seen{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,11em),1fr));gap:.3em .6em;list-style:none;padding:0;counter-reset:step}
        ol.seen li{counter-increment:step;border:.08em solid #111;padding:.2em .3em;text-align:center;font-weight:bold}
        ol.seen li::before{content:counter(step);float:left;font-size:1.5em;line-height:1}
        ol.seen svg{display:block;margin:0 auto .1em;max-width:100%}
        dl.row+p{break-before:avoid}
        @page{margin:11mm 13mm 14mm}
        @media print{body{max-width:none;padding:0}body.large{line-height:1.18}body.large h2{margin:.45em 0 .1em}body.small{font-size:10.5pt;line-height:1.2}body.small h2{margin:.35em 0 .1em}body.small ol,ul.row{columns:2;column-gap:2.4em}}

        """;

    /// <summary>What only a paper with a table or a picture by itself needs.</summary>
    private const string TableLook = """
        body{max-width:64em}
        .picture svg{display:block;max-width:100%;height:11em;width:auto}
        table{border-collapse:collapse;width:100%;table-layout:fixed}
        th,td{border:.08em solid #111;padding:.2em .35em;text-align:left;vertical-align:top;overflow-wrap:anywhere}
        tr{break-inside:avoid}
        .wide{overflow-x:auto}
        @media print{.wide{overflow:visible}.wide table{min-width:0!important}}

        """;

    /// <summary>The file.</summary>
    public static string Write(Document document)
    {
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<!DOCTYPE html>\n<html lang=\"{document.Language}\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<title>{Escape(document.Title)}</title>\n<style>\n{Style.ReplaceLineEndings("\n")}{PageFill.Style(document)}{Tables(document)}{Feet(document)}</style>\n</head>\n");
        html.Append(CultureInfo.InvariantCulture, $"<body class=\"{(document.LargePrint ? "large" : "small")}\">\n<main>\n<h1>{Escape(document.Title)}</h1>\n");
        foreach (var block in document.Blocks)
        {
            html.AppendJoin('\n', Of(block)).Append('\n');
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static string Tables(Document document) =>
        document.Blocks.Any(b => b is Block.SideBySide or Block.Picture) ? TableLook.ReplaceLineEndings("\n") : string.Empty;

    /// <summary>The foot of every printed page: whose it is, and which of how many.</summary>
    private static string Feet(Document document) => document.Footer.Length == 0
        ? string.Empty
        : $"@page{{@bottom-left{{font-size:9pt;content:\"{Css(document.Footer)}\"}}@bottom-right{{font-size:9pt;content:counter(page) \" / \" counter(pages)}}}}\n";

    /// <summary>Text for a string of a style sheet: whatever could end it is written as its number.</summary>
    private static string Css(string text) =>
        string.Concat(ReadableText.Shown(text).Select(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or ',' or '-' or '.' ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"\\{(int)c:x6}")));

    private static IEnumerable<string> Of(Block block) => block switch
    {
        Block.Heading h => [$"<h{h.Level}{(h.OnNewPage ? " class=\"page\"" : string.Empty)}>{Escape(h.Text)}</h{h.Level}>"],
        Block.Paragraph { Urgent: true } p => [$"<p class=\"urgent\">{Escape(p.Text)}</p>"],
        Block.Paragraph p => [$"<p>{Escape(p.Text)}</p>"],
        Block.Points p => [p.InRow ? "<ul class=\"row\">" : "<ul>", .. p.Items.Select(i => $"<li>{Escape(i)}</li>"), "</ul>"],
        Block.Facts f => [f.InRow ? "<dl class=\"row\">" : "<dl>", .. f.Items.Select(Of), "</dl>"],
        Block.Steps { Large: true } s => ["<ol class=\"seen\">", .. s.Items.Select((text, i) => $"<li>{(s.Drawings.ElementAtOrDefault(i) is { } d ? Of(d) : string.Empty)}{Escape(text)}</li>"), "</ol>"],
        Block.Steps s => [s.First == 1 ? "<ol>" : $"<ol start=\"{s.First}\">", .. s.Items.Select((text, i) => Step(text, s.Drawings.ElementAtOrDefault(i))), "</ol>"],
        Block.Picture p => [$"<div class=\"picture\">{Of(p.Drawing)}</div>"],
        Block.SideBySide t =>
        [
            $"<div class=\"wide\" role=\"region\" aria-label=\"Side by side\" tabindex=\"0\"><table style=\"min-width:{9 * (t.Names.Length + 2)}em\">",
            $"<tr>{string.Concat(t.Names.Prepend("What it means").Prepend("Feature").Select(n => $"<th scope=\"col\">{Escape(n)}</th>"))}</tr>",
            .. t.Rows.Select(r => $"<tr><th scope=\"row\">{Escape(r.Feature)}</th>{string.Concat(r.Says.Select(Spoken.Capital).Prepend(r.Meaning).Select(c => $"<td>{Escape(c)}</td>"))}</tr>"),
            "</table></div>",
        ],
        _ => throw new ArgumentException($"no HTML is known for {block.GetType().Name}", nameof(block)),
    };

    private static string Of(Fact fact) => fact.Value.Length == 0
        ? $"<div><dt>{Escape(fact.Label)}:</dt> <dd><span class=\"fill\"></span></dd></div>"
        : $"<div><dt>{Escape(fact.Label)}:</dt> <dd>{Escape(fact.Value)}</dd></div>";

    private static string Step(string text, Drawing? drawing) =>
        drawing is null ? $"<li>{Escape(text)}</li>" : $"<li class=\"drawn\">{Of(drawing)}{Escape(text)}</li>";

    private static string Of(Drawing drawing) =>
        $"<svg {drawing.Attributes} role=\"img\" aria-label=\"{Escape(drawing.Title)}. {Escape(drawing.Description)}\">{drawing.Shapes}</svg>";

    private static string Escape(string text) => WebUtility.HtmlEncode(ReadableText.Shown(text));
}
