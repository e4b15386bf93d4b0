using System.Globalization;
using System.Net;
using System.Text;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>A chart as SVG: black on white, with a title and a description for those who do not see it.</summary>
internal sealed class SvgDrawing
{
    private readonly StringBuilder _svg = new();

    /// <summary>Begins a chart.</summary>
    /// <param name="width">Width of the view, in its own units.</param>
    /// <param name="height">Height of the view.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="description">The same as the chart, in sentences.</param>
    internal SvgDrawing(int width, int height, string title, string description)
    {
        Add($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" role=\"img\" aria-labelledby=\"t d\">");
        Add($"<title id=\"t\">{title}</title>");
        Add($"<desc id=\"d\">{description}</desc>");
        // Without it black letters vanish where the viewer is dark.
        Add($"<rect width=\"{width}\" height=\"{height}\" fill=\"#ffffff\"/>");
        Add($"<g fill=\"#000000\" font-family=\"sans-serif\" font-size=\"14\">");
    }

    /// <summary>Adds an element. Texts in its slots are escaped; numbers get at most one decimal.</summary>
    internal void Add(FormattableString element) =>
        _svg.AppendFormat(CultureInfo.InvariantCulture, element.Format, [.. element.GetArguments().Select(Shown)]).Append('\n');

    /// <summary>The file.</summary>
    public override string ToString() => $"{_svg}</g>\n</svg>\n";

    private static object? Shown(object? slot) => slot switch
    {
        string text => WebUtility.HtmlEncode(ReadableText.Shown(text)),
        double number => number.ToString("0.#", CultureInfo.InvariantCulture),
        _ => slot,
    };
}
