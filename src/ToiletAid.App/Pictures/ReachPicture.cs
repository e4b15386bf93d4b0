using System.Globalization;
using System.Text;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Pictures;

/// <summary>A drawing of the best pose from the side and from behind, as SVG.</summary>
/// <remarks>Nothing is told by colour alone: the way is dashed and thick, everything has a label, and the description says the same as
/// the picture.</remarks>
public static class ReachPicture
{
    private const double Scale = 320;
    private const int ViewWidth = 420;
    private const int Height = 560;
    private const double Middle = 330;

    /// <summary>Middle of the head from the neck, half its height, ends of the seat and its thickness: a convention of drawing, as shares of the stature or in m.</summary>
    private const double HeadUp = 0.115;
    private const double HeadHigh = 0.064;
    private const double HeadWide = 0.052;
    private const double SeatEnd = 0.3;
    private const double SeatThick = 0.025;

    /// <summary>Draws one need.</summary>
    /// <param name="report">The report it belongs to.</param>
    /// <param name="need">A need with a sketch: allowed, and computed with detail.</param>
    /// <param name="hand">A left hand is drawn as the mirror image; either is drawn as right.</param>
    /// <returns>An SVG document with title and description.</returns>
    /// <exception cref="ArgumentException"><paramref name="need"/> has no sketch.</exception>
    public static string Svg(ReachReport report, ReachNeed need, WorkingHand hand)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(need);
        ReachSketch sketch = need.Sketch ?? throw new ArgumentException("a need without a sketch cannot be drawn", nameof(need));
        int mirror = hand == WorkingHand.Left ? -1 : 1;
        var svg = new StringBuilder();
        Line(svg, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {2 * ViewWidth} {Height}\" role=\"img\" aria-labelledby=\"t d\">");
        Line(svg, $"<title id=\"t\">{ReachDescription.Title(need)}</title>");
        Line(svg, $"<desc id=\"d\">{string.Join(' ', ReachDescription.Sentences(report, need, hand))}</desc>");
        Line(svg, $"<rect width=\"{2 * ViewWidth}\" height=\"{Height}\" fill=\"#ffffff\"/>");
        Line(svg, $"<g fill=\"none\" stroke=\"#000000\" stroke-width=\"2\" font-family=\"sans-serif\" font-size=\"16\">");
        var (behind, before, half) = sketch.Opening;
        View(svg, sketch, report.Body.Stature, sketch.PelvisFromSide, ViewWidth / 2, "From the side", p => (mirror * p.X, p.Z), (-behind, before));
        View(svg, sketch, report.Body.Stature, sketch.PelvisFromBehind, ViewWidth * 3 / 2, "From behind", p => (mirror * p.Y, p.Z), (-half, half));
        Ruler(svg);
        Text(svg, ViewWidth, Height - 70, "Dashed: the way from grip to skin");
        Text(svg, ViewWidth, Height - 44, Length(need));
        Text(svg, ViewWidth, Height - 18, string.Create(CultureInfo.InvariantCulture, $"Bare hand past the grip: {100 * report.HandReach:0} cm"));
        Line(svg, $"</g>");
        Line(svg, $"</svg>");
        return svg.ToString();
    }

    private static string Length(ReachNeed need) => double.IsFinite(need.MiddleLength)
        ? string.Create(CultureInfo.InvariantCulture, $"Needed for the pose drawn, with the stroke: {100 * need.MiddleLength:0} cm")
        : "No way in this posture";

    private static void View(
        StringBuilder svg,
        ReachSketch sketch,
        double stature,
        IEnumerable<SketchPoint> pelvis,
        int centre,
        string name,
        Func<SketchPoint, (double Across, double Up)> see,
        (double From, double To) opening)
    {
        Text(svg, centre, 28, name);
        Head(svg, sketch.Neck, stature, see, X, Y);
        Seat(svg, sketch.SeatUp, centre, see(new SketchPoint(1, 1, 0)).Across < 0 ? (-opening.To, -opening.From) : opening);
        Path(svg, pelvis, closed: true, "fill=\"#eeeeee\"");
        Path(svg, [new SketchPoint(0, 0, 0), sketch.Neck], closed: false, "stroke-width=\"6\" stroke-linecap=\"round\"");
        Path(svg, [sketch.OtherShoulder, sketch.Neck, sketch.Shoulder], closed: false, "stroke-width=\"4\"");
        Path(svg, [sketch.OtherKnee, new SketchPoint(0, 0, 0), sketch.Knee], closed: false, "stroke=\"#555555\" stroke-width=\"4\"");
        Path(svg, [sketch.Shoulder, sketch.Elbow, sketch.Grip], closed: false, "stroke-width=\"5\" stroke-linejoin=\"round\"");
        Path(svg, sketch.Way, closed: false, "stroke=\"#b00020\" stroke-width=\"4\" stroke-dasharray=\"9 5\"");
        Dot(svg, sketch.Grip, 7, "fill=\"#ffffff\"");
        Dot(svg, sketch.Way[^1], 5, "fill=\"#b00020\" stroke=\"#b00020\"");
        SketchPoint target = sketch.Way[^1];
        Label(svg, sketch.Grip, target, 5, "grip");
        Label(svg, sketch.Elbow, sketch.Neck, 5, "elbow");
        Label(svg, sketch.Neck, sketch.Shoulder, -12, "shoulders");
        Label(svg, target, sketch.Grip, 22, "target");

        void Path(StringBuilder to, IEnumerable<SketchPoint> points, bool closed, string style)
        {
            string data = string.Join(" L ", points.Select(p => $"{X(p)} {Y(p)}"));
            Line(to, $"<path d=\"M {data}{(closed ? " Z" : string.Empty)}\" {style}/>");
        }

        void Dot(StringBuilder to, SketchPoint p, int radius, string style) =>
            Line(to, $"<circle cx=\"{X(p)}\" cy=\"{Y(p)}\" r=\"{radius}\" {style}/>");

        // On the side away from what lies next to it, with a white rim, so that no line runs through a word.
        void Label(StringBuilder to, SketchPoint p, SketchPoint awayFrom, int down, string label)
        {
            bool left = see(p).Across < see(awayFrom).Across;
            string rim = "fill=\"#000000\" stroke=\"#ffffff\" stroke-width=\"4\" paint-order=\"stroke\"";
            Line(to, $"<text x=\"{X(p)}\" y=\"{Y(p)}\" dx=\"{(left ? -12 : 12)}\" dy=\"{down}\" text-anchor=\"{(left ? "end" : "start")}\" {rim}>{label}</text>");
        }

        string X(SketchPoint p) => Number(centre + (Scale * see(p).Across));

        string Y(SketchPoint p) => Number(Middle - (Scale * see(p).Up));
    }

    /// <summary>In line with the trunk, over the neck.</summary>
    private static void Head(
        StringBuilder svg,
        SketchPoint neck,
        double stature,
        Func<SketchPoint, (double Across, double Up)> see,
        Func<SketchPoint, string> x,
        Func<SketchPoint, string> y)
    {
        double up = 1 + (HeadUp * stature / Math.Sqrt((neck.X * neck.X) + (neck.Y * neck.Y) + (neck.Z * neck.Z)));
        var middle = new SketchPoint(neck.X * up, neck.Y * up, neck.Z * up);
        var (across, height) = see(neck);
        double turn = Math.Atan2(across, height) * 180 / Math.PI;
        Line(svg, $"<ellipse data-part=\"head\" cx=\"{x(middle)}\" cy=\"{y(middle)}\" rx=\"{Number(Scale * HeadWide * stature)}\" ry=\"{Number(Scale * HeadHigh * stature)}\" transform=\"rotate({Number(turn)} {x(middle)} {y(middle)})\" fill=\"#ffffff\"/>");
    }

    /// <summary>In section: two pieces with the opening between them.</summary>
    private static void Seat(StringBuilder svg, double? up, int centre, (double From, double To) opening)
    {
        if (up is not { } seat)
        {
            return;
        }

        string y = Number(Middle - (Scale * seat)), thick = Number(Scale * SeatThick);
        Line(svg, $"<rect data-part=\"seat\" x=\"{Number(centre - (Scale * SeatEnd))}\" y=\"{y}\" width=\"{Number(Scale * (SeatEnd + opening.From))}\" height=\"{thick}\" fill=\"#cccccc\"/>");
        Line(svg, $"<rect data-part=\"seat\" x=\"{Number(centre + (Scale * opening.To))}\" y=\"{y}\" width=\"{Number(Scale * (SeatEnd - opening.To))}\" height=\"{thick}\" fill=\"#cccccc\"/>");
        Line(svg, $"<text x=\"{Number(centre - (Scale * SeatEnd))}\" y=\"{Number(Middle - (Scale * seat) + 28)}\" fill=\"#000000\" stroke=\"none\">seat</text>");
    }

    /// <summary>A ruler in centimetres, for both views.</summary>
    private static void Ruler(StringBuilder svg)
    {
        const int Centimetres = 40, Step = 20, Y = Height - 124;
        double left = ViewWidth - (Scale * Centimetres / 200);
        Line(svg, $"<path data-part=\"scale\" d=\"M {Number(left)} {Y} H {Number(left + (Scale * Centimetres / 100))}\"/>");
        for (int cm = 0; cm <= Centimetres; cm += Step)
        {
            double x = left + (Scale * cm / 100);
            Line(svg, $"<path d=\"M {Number(x)} {Y - 6} V {Y + 6}\"/>");
            Line(svg, $"<text x=\"{Number(x)}\" y=\"{Y + 24}\" text-anchor=\"middle\" fill=\"#000000\" stroke=\"none\">{cm}{(cm == Centimetres ? " cm" : string.Empty)}</text>");
        }
    }

    private static void Text(StringBuilder svg, int x, int y, string text) =>
        Line(svg, $"<text x=\"{x}\" y=\"{y}\" text-anchor=\"middle\" fill=\"#000000\" stroke=\"none\">{text}</text>");

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static void Line(StringBuilder svg, FormattableString text) =>
        svg.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
