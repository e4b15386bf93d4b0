using System.Runtime.InteropServices;

namespace ToiletAid.Core.Reach;

/// <summary>What the solver makes small: the way from grip centre to target, plus what it costs to press into solids, to come from the
/// wrong side, or to hold the aid in a direction that forearm and wrist do not give.</summary>
/// <remarks>Solids are stiff springs, as flesh is, so that the value is smooth and one number orders all poses: a wider box of joint
/// ranges can never have a larger least value.</remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly struct ReachObjective(in Body body, in Scene scene)
{
    private readonly Body _body = body;
    private readonly Scene _scene = scene;

    /// <summary>The value of a pose, m.</summary>
    public double At(in JointVector q)
    {
        Arm arm = Arm.At(in _body, _scene.PelvisLean, _scene.PelvisBend, in q);
        Space grip = arm.ToPelvis(arm.Grip);
        Space touch;
        double length, depth = 0;
        PelvisPath path = default;
        if (_scene.TargetOnTrunk)
        {
            touch = _scene.Target;
            length = (grip - touch).Length;
        }
        else
        {
            path = PelvisPath.To(in _body, _scene.Target, grip);
            touch = _scene.Straight ? _scene.Target : path.Touch;
            length = _scene.Straight ? path.Straight : path.Length;
            depth = _scene.Straight ? Over(path.Depth - _body.TissueGive) : 0;
        }

        double pressed = (depth * depth) + Solids(in arm, grip) + Wedge(grip);
        if (_scene.HasSeat && !_scene.TargetOnTrunk)
        {
            pressed += PathOnSeat(in arm, in path);
        }

        return length + (_body.Stiffness / 2 * pressed) + HandleBend(in arm, arm.FromPelvis(touch));
    }

    /// <summary>Length of the way alone at a pose, m.</summary>
    public double LengthAt(in JointVector q)
    {
        Arm arm = Arm.At(in _body, _scene.PelvisLean, _scene.PelvisBend, in q);
        Space grip = arm.ToPelvis(arm.Grip);
        PelvisPath path = PelvisPath.To(in _body, _scene.Target, grip);
        return _scene.TargetOnTrunk ? (grip - _scene.Target).Length : (_scene.Straight ? path.Straight : path.Length);
    }

    private static double Over(double depth) => depth > 0 ? depth : 0;

    private static double Square(double x) => x * x;

    /// <summary>0 below 0, 1 above 1, smooth between.</summary>
    private static double Step(double x)
    {
        double t = Math.Min(Math.Max(x, 0), 1);
        return t * t * (3 - (2 * t));
    }

    private double Solids(in Arm arm, Space grip)
    {
        Space middleInTrunk = 0.5 * (arm.ElbowInTrunk + arm.GripInTrunk);
        Space middle = 0.5 * (arm.Elbow + arm.Grip);
        double hand = _body.HandRadius, fore = _body.ForearmRadius;

        double pressed = Square(Over(hand - PelvisGap(grip)))
            + Square(Over(fore - PelvisGap(arm.ToPelvis(middle))))
            + Square(Over(fore - PelvisGap(arm.ToPelvis(arm.Elbow))))
            + Square(TrunkDepth(arm.GripInTrunk, hand))
            + Square(TrunkDepth(middleInTrunk, fore))
            + Square(TrunkDepth(arm.ElbowInTrunk, fore));
        pressed += Thighs(arm.Grip, hand) + Thighs(middle, fore) + Thighs(arm.Elbow, fore);
        if (_scene.HasSeat)
        {
            double rise = arm.Rise * _body.ThighOut;
            pressed += Square(SeatDepth(arm.Grip, hand, rise)) + Square(SeatDepth(middle, fore, rise)) + Square(SeatDepth(arm.Elbow, fore, rise));
        }

        return _scene.Mattress == 0
            ? pressed
            : pressed + Square(MattressDepth(arm.Grip, hand)) + Square(MattressDepth(middle, fore)) + Square(MattressDepth(arm.Elbow, fore));
    }

    /// <summary>Distance from the skin of the pelvis, m; below 0 inside. First-order, exact on the skin.</summary>
    private double PelvisGap(Space p)
    {
        double a = _body.PelvisForward, b = _body.PelvisSideways, c = _body.PelvisUp;
        var q = new Space(p.X / a, p.Y / b, p.Z / c);
        double r = q.Length;
        var slope = new Space(q.X / a, q.Y / b, q.Z / c);
        return r < 1e-9 ? -Math.Min(a, Math.Min(b, c)) : r * (r - 1) / slope.Length;
    }

    /// <summary>How deep a ball presses into the trunk, m; fades out below the waist, where the pelvis takes over.</summary>
    private double TrunkDepth(Space p, double radius)
    {
        double x = (p.X - _body.TrunkCentre) / _body.TrunkForward, y = p.Y / _body.TrunkSideways;
        double r = Math.Sqrt((x * x) + (y * y));
        double sx = x / _body.TrunkForward, sy = y / _body.TrunkSideways;
        double gap = r < 1e-9 ? -Math.Min(_body.TrunkForward, _body.TrunkSideways) : r * (r - 1) / Math.Sqrt((sx * sx) + (sy * sy));
        return Over(radius - gap) * Step(p.Z / (0.5 * _body.PelvisUp)) * Step((_body.ShoulderUp - p.Z) / (0.5 * _body.PelvisUp));
    }

    private double Thighs(Space p, double radius) =>
        Square(ThighDepth(p, radius, 1)) + Square(ThighDepth(p, radius, -1));

    private double ThighDepth(Space p, double radius, double side)
    {
        var from = new Space(p.X, p.Y - (side * _body.ThighOut), p.Z);
        var along = new Space(_scene.Thigh.X, side * _scene.Thigh.Y, _scene.Thigh.Z);
        double t = Math.Min(Math.Max(Space.Dot(from, along), _body.ThighRadius), _body.ThighLength);
        Space away = from - (t * along);
        return Over(radius + _body.ThighRadius - away.Length);
    }

    /// <summary>How deep a ball is in the seat; in the opening it may go down a little.</summary>
    private double SeatDepth(Space p, double radius, double rise)
    {
        double open = Opening(p, radius);
        double floor = _scene.SeatUp - rise + (radius * (1 - open)) - (_body.OpeningDepth * open);
        return Over(floor - p.Z);
    }

    private double Opening(Space p, double radius) =>
        Step((_body.OpeningHalfWidth - Math.Abs(p.Y)) / radius)
        * Step((p.X + _body.OpeningBack) / radius)
        * Step((_body.OpeningFront - p.X) / radius);

    private double PathOnSeat(in Arm arm, in PelvisPath path)
    {
        double rise = arm.Rise * _body.ThighOut;
        Space first = arm.FromPelvis(path.FirstThird), second = arm.FromPelvis(path.SecondThird), touch = arm.FromPelvis(path.Touch);
        double thin = 0.25 * _body.HandRadius;
        return Square(ThinDepth(first, thin, rise)) + Square(ThinDepth(second, thin, rise)) + Square(ThinDepth(touch, thin, rise));
    }

    private double ThinDepth(Space p, double radius, double rise)
    {
        double floor = _scene.SeatUp - rise + radius - ((radius + (2 * _body.OpeningDepth)) * Opening(p, radius));
        return Over(floor - p.Z);
    }

    private double MattressDepth(Space p, double radius) =>
        _scene.Mattress == 1 ? Over(radius - _body.PelvisSideways - p.Y) : Over(radius - _body.PelvisForward - p.X);

    /// <summary>Square of the distance by which the grip lies outside the sector of the approach, seen from the target.</summary>
    private double Wedge(Space grip)
    {
        double x = grip.X - _scene.Target.X, y = grip.Y - _scene.Target.Y;
        double forth = (x * _scene.WedgeX) + (y * _scene.WedgeY);
        double aside = Math.Abs((x * _scene.WedgeY) - (y * _scene.WedgeX));
        return Square(Over((aside * _scene.WedgeCosine) - (forth * _scene.WedgeSine)));
    }

    /// <summary>Extra length of a handle that must be bent where forearm and wrist do not point it.</summary>
    private double HandleBend(in Arm arm, Space touch)
    {
        Space d = touch - arm.Grip;
        double size = d.Length;
        if (size < 1e-9)
        {
            return 0;
        }

        Space fore = (1 / _body.Forearm) * (arm.Grip - arm.Elbow);
        double forth = Space.Dot(d, fore) / size;
        double thumb = Space.Dot(d, arm.Thumb) / size;
        double inward = Space.Dot(d, Space.Cross(fore, arm.Thumb)) / size;
        double tilt = Over(Math.Acos(Math.Min(Math.Max(forth, -1), 1)) - (Math.PI / 2) - _scene.Deviation);

        // The handle sticks out of either end of the fist, so a direction and its opposite are the same.
        double turn = Math.Atan2(thumb < 0 ? -inward : inward, Math.Abs(thumb));
        double aside = Over(turn - _scene.Pronation) + Over(-turn - _scene.Supination);
        return _body.HandleBend * ((tilt * tilt) + (aside * aside * ((thumb * thumb) + (inward * inward))));
    }
}
