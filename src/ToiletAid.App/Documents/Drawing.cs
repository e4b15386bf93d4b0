namespace ToiletAid.App.Documents;

/// <summary>A line drawing with its words, so that nobody needs to see it.</summary>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="Description">The same as the lines show, in sentences.</param>
/// <param name="Shapes">Shapes of an SVG drawing 320 wide and 240 high.</param>
public sealed record Drawing(string Title, string Description, string Shapes);
