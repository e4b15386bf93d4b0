using System.Globalization;
using System.Xml.Linq;
using ToiletAid.App.Pictures;

namespace ToiletAid.Acceptance.Tests.Pictures;

/// <summary>What a drawing shows, read off its lines: where limbs begin and end, what carries the person, where the arrow goes. It shares no code with what draws.</summary>
internal sealed class SeenPicture
{
    private readonly XElement _root;

    internal SeenPicture(Drawing drawing) => _root = XElement.Parse($"<svg>{drawing.Shapes}</svg>");

    internal string Kind => Only("data-picture");

    internal string View => Only("data-view");

    internal string Support => Only("data-support");

    internal bool HasHelper => All("data-figure").Contains("helper");

    internal string? Aid => All("data-aid").SingleOrDefault();

    internal string? Form => All("data-form").SingleOrDefault();

    internal (int Sheets, int Folds) Paper => (Number("data-sheets"), Number("data-folds"));

    /// <summary>The trunk against the upright, degrees; to the right above 0.</summary>
    internal double TrunkLean => Direction("trunk") is var (x, up) ? Degrees(x, up) : 0;

    /// <summary>The thigh below the level, degrees.</summary>
    internal double ThighDrop => Direction("thigh") is var (x, up) ? Degrees(-up, Math.Abs(x)) : 0;

    /// <summary>How much higher the end of the pelvis is that is on the side of the cleaning arm, degrees.</summary>
    internal double PelvisLift
    {
        get
        {
            var (x, up) = Direction("pelvis");
            return Degrees(Math.Sign(x) == ArmSide ? up : -up, Math.Abs(x));
        }
    }

    /// <summary>1 where the cleaning arm is on the right of the trunk, else -1.</summary>
    internal int ArmSide => Point(Limb("arm", "upper-arm"), "data-from").X > Point(Limb("person", "trunk"), "data-from").X ? 1 : -1;

    /// <summary>How high the hip is over the floor, in lengths of the trunk.</summary>
    internal double HipHeight
    {
        get
        {
            var trunk = Limb("person", "trunk");
            var (hip, neck) = (Point(trunk, "data-from"), Point(trunk, "data-to"));
            double floor = _root.Descendants().Where(e => e.Attribute("data-limb")?.Value is "foot" or "leg" or "shank").Max(e => Math.Max(Point(e, "data-to").Y, Point(e, "data-from").Y));
            return (floor - hip.Y) / Math.Sqrt(((hip.X - neck.X) * (hip.X - neck.X)) + ((hip.Y - neck.Y) * (hip.Y - neck.Y)));
        }
    }

    /// <summary>Where the arrow begins as seen from the skin, by the trunk: before it above 0, and toward the head above 0.</summary>
    internal (double Before, double TowardHead) ArrowStart
    {
        get
        {
            var arrow = _root.Descendants().Single(e => e.Attribute("data-arrow") is not null);
            var (from, to) = (Point(arrow, "data-from"), Point(arrow, "data-to"));
            var (x, up) = Direction("trunk");
            double length = Math.Sqrt((x * x) + (up * up)), dx = from.X - to.X, dup = to.Y - from.Y;
            return (((dx * up) - (dup * x)) / length, ((dx * x) + (dup * up)) / length);
        }
    }

    private static double Degrees(double y, double x) => Math.Atan2(y, x) * 180 / Math.PI;

    private static (double X, double Y) Point(XElement limb, string end)
    {
        string[] parts = limb.Attribute(end)!.Value.Split(' ');
        return (double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture));
    }

    private XElement Limb(string figure, string limb) => _root.Descendants()
        .First(e => e.Attribute("data-limb")?.Value == limb && e.Ancestors().Any(a => a.Attribute("data-figure")?.Value == figure));

    private (double X, double Up) Direction(string limb)
    {
        var found = Limb("person", limb);
        var (from, to) = (Point(found, "data-from"), Point(found, "data-to"));
        return (to.X - from.X, from.Y - to.Y);
    }

    private IEnumerable<string> All(string fact) => _root.Descendants().Select(e => e.Attribute(fact)?.Value).OfType<string>();

    private string Only(string fact) => All(fact).Distinct(StringComparer.Ordinal).Single();

    private int Number(string fact) => int.Parse(Only(fact), CultureInfo.InvariantCulture);
}
