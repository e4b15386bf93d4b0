namespace ToiletAid.App.Pictures;

/// <summary>A line drawing with its words, so that nobody needs to see it.</summary>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="Description">The same as the lines show, in sentences.</param>
/// <param name="Shapes">Shapes of an SVG drawing.</param>
/// <param name="View">What of it is seen: left, top, width and height in its units.</param>
public sealed record Drawing(string Title, string Description, string Shapes, string View)
{
    /// <summary>What the SVG element around the shapes must say.</summary>
    internal string Attributes => $"viewBox=\"{View}\" fill=\"none\" stroke=\"#111\" stroke-width=\"3\" stroke-linecap=\"round\" stroke-linejoin=\"round\"";
}
