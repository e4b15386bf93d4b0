using System.Globalization;
using System.Xml;

namespace ToiletAid.App.Wording;

/// <summary>First places before and after as a bar chart in SVG. Its description holds every number in words, so nothing is only to be seen.</summary>
public static class WhatIfPicture
{
    private const int Width = 900;
    private const int Bars = 480;
    private const int LabelWidth = 360;
    private const int RowHeight = 48;
    private const int Head = 56;

    /// <summary>Writes the picture.</summary>
    public static void Write(Stream stream, string title, WhatIfTally tally)
    {
        var rows = tally.Kinds.ToList();
        double most = Math.Max(1, rows.Select(r => Math.Max(r.Before, r.After)).DefaultIfEmpty(1).Max());
        using var svg = XmlWriter.Create(stream, new() { Indent = true, NewLineChars = "\n", Encoding = new System.Text.UTF8Encoding(false) });
        svg.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        svg.WriteAttributeString("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {Width} {Head + (rows.Count * RowHeight) + 16}"));
        svg.WriteAttributeString("role", "img");
        svg.WriteAttributeString("aria-labelledby", "title description");
        Text(svg, "title", title);
        Text(svg, "desc", string.Join(' ', WhatIfText.Summary(tally)));
        Label(svg, 16, 24, title);
        Label(svg, 16, 44, "Outlined bar: before. Filled bar: after.");
        for (int i = 0; i < rows.Count; i++)
        {
            int y = Head + (i * RowHeight);
            Label(svg, 16, y + 24, Short(tally.Name(rows[i].Id)));
            Bar(svg, y + 4, rows[i].Before, most, isFilled: false);
            Bar(svg, y + 22, rows[i].After, most, isFilled: true);
        }

        svg.WriteEndElement();
    }

    /// <summary>Before and after differ by outline and fill, not by colour, so that a grey print tells them apart.</summary>
    private static void Bar(XmlWriter svg, int y, long count, double most, bool isFilled)
    {
        double length = Bars * count / most;
        svg.WriteStartElement("rect");
        svg.WriteAttributeString("x", LabelWidth.ToString(CultureInfo.InvariantCulture));
        svg.WriteAttributeString("y", y.ToString(CultureInfo.InvariantCulture));
        svg.WriteAttributeString("width", length.ToString("0.#", CultureInfo.InvariantCulture));
        svg.WriteAttributeString("height", "16");
        svg.WriteAttributeString("fill", isFilled ? "#000" : "#fff");
        svg.WriteAttributeString("stroke", "#000");
        svg.WriteEndElement();
        Label(svg, LabelWidth + length + 6, y + 13, count.ToString("N0", CultureInfo.InvariantCulture));
    }

    private static string Short(string name) => name.Length <= 46 ? name : name[..name.LastIndexOf(' ', 45)] + " …";

    private static void Label(XmlWriter svg, double x, int y, string text)
    {
        svg.WriteStartElement("text");
        svg.WriteAttributeString("x", x.ToString("0.#", CultureInfo.InvariantCulture));
        svg.WriteAttributeString("y", y.ToString(CultureInfo.InvariantCulture));
        svg.WriteAttributeString("font-family", "sans-serif");
        svg.WriteAttributeString("font-size", "14");
        svg.WriteString(text);
        svg.WriteEndElement();
    }

    private static void Text(XmlWriter svg, string element, string text)
    {
        svg.WriteStartElement(element);
        svg.WriteAttributeString("id", element == "desc" ? "description" : element);
        svg.WriteString(text);
        svg.WriteEndElement();
    }
}
