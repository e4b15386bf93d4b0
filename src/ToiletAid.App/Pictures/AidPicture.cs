using System.Net;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Pictures;

/// <summary>The shape of a kind of aid as a file, drawn from its attributes.</summary>
public static class AidPicture
{
    /// <summary>The same as the lines show, in sentences.</summary>
    public static string Words(Aid aid) => AidForm.Of(aid).Words();

    /// <summary>The shape by itself, with a scale, for a document.</summary>
    internal static Drawing Drawing(Aid aid) => new ToolDrawing(AidForm.Of(aid)).Shape();

    /// <summary>An SVG document with title and description, on white ground.</summary>
    public static string Svg(Aid aid)
    {
        var drawing = Drawing(aid);
        string[] view = drawing.View.Split(' ');
        string name = WebUtility.HtmlEncode(ReadableText.Shown(aid.Name)), words = WebUtility.HtmlEncode(drawing.Description);
        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" {drawing.Attributes} role="img" aria-labelledby="t d">
            <title id="t">{name}</title>
            <desc id="d">{words}</desc>
            <rect x="{view[0]}" y="{view[1]}" width="{view[2]}" height="{view[3]}" fill="#fff" stroke="none"/>
            {drawing.Shapes}
            </svg>

            """.ReplaceLineEndings("\n");
    }
}
