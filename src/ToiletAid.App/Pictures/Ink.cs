using System.Globalization;
using System.Text;

namespace ToiletAid.App.Pictures;

/// <summary>Lines on a picture: places in centimetres go in, SVG in its own units comes out. Black, white and one grey, so that every printer will do.</summary>
/// <param name="scale">Units for a centimetre.</param>
/// <param name="origin">Where the middle of the scene lies, in units from the upper left.</param>
internal sealed class Ink(double scale, Spot origin)
{
    internal const int Width = 320;
    internal const int Height = 240;
    internal const string Black = "#111";
    internal const string White = "#fff";
    internal const string Grey = "#ccc";

    private const double Margin = 6;

    private readonly StringBuilder _svg = new();
    private (double Left, double Top, double Right, double Bottom) _seen = (Width, Height, 0, 0);

    internal double Scale => scale;

    /// <summary>What was drawn.</summary>
    public override string ToString() => _svg.ToString();

    /// <summary>The part of the sheet that was drawn on, with a margin: left, top, width and height.</summary>
    internal string View
    {
        get
        {
            var (left, top, right, bottom) = (Math.Max(_seen.Left - Margin, 0), Math.Max(_seen.Top - Margin, 0), Math.Min(_seen.Right + Margin, Width), Math.Min(_seen.Bottom + Margin, Height));
            return $"{Number(left)} {Number(top)} {Number(right - left)} {Number(bottom - top)}";
        }
    }

    internal void Add(string element) => _svg.Append(element);

    internal void Open(string facts) => Add($"<g {facts}>");

    internal void Close() => Add("</g>");

    internal string At(Spot p)
    {
        var (x, y) = (origin.X + (scale * p.X), origin.Y - (scale * p.Y));
        _seen = (Math.Min(_seen.Left, x), Math.Min(_seen.Top, y), Math.Max(_seen.Right, x), Math.Max(_seen.Bottom, y));
        return $"{Number(x)} {Number(y)}";
    }

    /// <summary>Makes room for a circle.</summary>
    internal void Room(Spot middle, double radius)
    {
        _ = At(middle + new Spot(radius, radius));
        _ = At(middle - new Spot(radius, radius));
    }

    internal string Way(IEnumerable<Spot> spots) => "M" + string.Join('L', spots.Select(At));

    /// <summary>A line of a width in units.</summary>
    internal void Line(IEnumerable<Spot> spots, double units = 3, string colour = Black, string more = "") =>
        Add($"<path d=\"{Way(spots)}\" stroke=\"{colour}\" stroke-width=\"{Number(units)}\"{more}/>");

    /// <summary>A closed shape with a thin edge.</summary>
    internal void Shape(IEnumerable<Spot> spots, string fill = White, double units = 2.5) =>
        Add($"<path d=\"{Way(spots)}Z\" fill=\"{fill}\" stroke=\"{Black}\" stroke-width=\"{Number(units)}\"/>");

    internal void Circle(Spot middle, double centimetres, string fill = White, double units = 2.5)
    {
        Room(middle, centimetres);
        Add($"<circle cx=\"{Number(origin.X + (scale * middle.X))}\" cy=\"{Number(origin.Y - (scale * middle.Y))}\" r=\"{Number(scale * centimetres)}\" fill=\"{fill}\" stroke=\"{Black}\" stroke-width=\"{Number(units)}\"/>");
    }

    internal void Text(Spot middle, string text, int size = 16)
    {
        string[] at = At(middle).Split(' ');
        Room(middle, 1.4 * size / scale);
        Add($"<text x=\"{at[0]}\" y=\"{at[1]}\" text-anchor=\"middle\" fill=\"{Black}\" stroke=\"none\" font-family=\"sans-serif\" font-size=\"{size}\">{text}</text>");
    }

    /// <summary>A tube as wide as it is: with an edge where there is room for one, else black.</summary>
    internal void Tube(IReadOnlyList<Spot> spots, double centimetres, string fill = Grey)
    {
        double units = Math.Max(scale * centimetres, 3);
        foreach (var spot in spots)
        {
            Room(spot, centimetres / 2);
        }

        Line(spots, units);
        if (units >= 7)
        {
            Line(spots, units - 4.5, fill);
        }
    }

    /// <summary>Limbs with one edge round all of them: first all wider in black, then all in the colour of the skin.</summary>
    internal void Limbs(IReadOnlyList<Limb> limbs, string fill = White, string more = "")
    {
        Add($"<g fill=\"{Black}\" stroke=\"{Black}\" stroke-width=\"5\"{more}>");
        foreach (var limb in limbs)
        {
            Add($"<path data-limb=\"{limb.Name}\" data-from=\"{At(limb.From)}\" data-to=\"{At(limb.To)}\" d=\"{Capsule(limb)}\"/>");
        }

        Add($"</g><g fill=\"{fill}\" stroke=\"none\">");
        foreach (var limb in limbs)
        {
            Add($"<path d=\"{Capsule(limb)}\"/>");
        }

        Close();
    }

    /// <summary>A thick way with a head at its end.</summary>
    internal void Arrow(IReadOnlyList<Spot> spots, double units = 5)
    {
        var along = (spots[^1] - spots[^2]).Unit;
        double head = 3.2 * units / scale;
        var neck = spots[^1] - (along * head);
        string points = Way([spots[^1], neck + (along.Left * (head * 0.62)), neck - (along.Left * (head * 0.62))]);
        string line = Way([.. spots.Take(spots.Count - 1), neck]);

        // A white rim keeps it apart from what it crosses.
        Add($"<path d=\"{line}\" stroke=\"{White}\" stroke-width=\"{Number(units + 5)}\"/><path d=\"{points}Z\" fill=\"{White}\" stroke=\"{White}\" stroke-width=\"6\"/>");
        Add($"<path data-arrow=\"way\" data-from=\"{At(spots[0])}\" data-to=\"{At(spots[^1])}\" d=\"{line}\" stroke=\"{Black}\" stroke-width=\"{Number(units)}\" stroke-linecap=\"butt\"/>");
        Add($"<path d=\"{points}Z\" fill=\"{Black}\" stroke=\"none\"/>");
    }

    /// <summary>Points of a curve through a start, toward a corner, to an end.</summary>
    internal static Spot[] Curve(Spot from, Spot corner, Spot to, int points = 12) =>
        [.. Enumerable.Range(0, points + 1).Select(i =>
        {
            double t = (double)i / points;
            return (from * ((1 - t) * (1 - t))) + (corner * (2 * t * (1 - t))) + (to * (t * t));
        })];

    private string Capsule(Limb limb)
    {
        var (a, ra, b, rb) = (limb.From, limb.FromRadius, limb.To, limb.ToRadius);
        Room(a, ra);
        Room(b, rb);
        double distance = (b - a).Length;
        if (distance <= Math.Abs(ra - rb) + 0.01)
        {
            var (m, r) = ra > rb ? (a, ra) : (b, rb);
            string size = $"{Number(scale * r)} {Number(scale * r)}";
            return $"M{At(m + new Spot(r, 0))}A{size} 0 1 1 {At(m - new Spot(r, 0))}A{size} 0 1 1 {At(m + new Spot(r, 0))}Z";
        }

        double toward = (b - a).Degrees, open = Math.Acos((ra - rb) / distance) * 180 / Math.PI;
        var (up, down) = (Spot.Toward(toward + open), Spot.Toward(toward - open));
        string atA = $"{Number(scale * ra)} {Number(scale * ra)}", atB = $"{Number(scale * rb)} {Number(scale * rb)}";
        return $"M{At(a + (up * ra))}L{At(b + (up * rb))}A{atB} 0 {(open > 90 ? 1 : 0)} 1 {At(b + (down * rb))}L{At(a + (down * ra))}A{atA} 0 {(open < 90 ? 1 : 0)} 1 {At(a + (up * ra))}Z";
    }

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
