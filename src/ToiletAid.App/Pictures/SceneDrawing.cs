using ToiletAid.App.Wording;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Pictures;

/// <summary>The person in the posture of the plan, on what carries them, with the way of hand, aid, water or helper to the skin.</summary>
/// <param name="facts">What it shows.</param>
/// <param name="toHelper">True when the words speak to the helper.</param>
/// <param name="isStill">True when only the posture is shown, before anything is done.</param>
internal sealed class SceneDrawing(SceneFacts facts, bool toHelper, bool isStill = false)
{
    private const double Seat = 43;
    private const double RaisedSeat = 53;
    private const double BedTop = 50;

    private readonly bool _isTall = facts.Form.Kind == AidFormKind.Glove || facts.Posture is Posture.Standing or Posture.HalfStanding;
    private Ink _ink = new(1, default);

    /// <summary>The drawing.</summary>
    internal Drawing Make()
    {
        _ink = facts.IsFromBehind ? new Ink(_isTall ? 1.27 : 1.55, new(160, 232))
            : facts.Support == Support.BedFromAbove ? new Ink(1.6, new(190, 132))
            : facts.Support is Support.Bed or Support.TiltedChair ? new Ink(facts.IsHelped ? 1.28 : 1.5, new(150, 232))
            : new Ink(_isTall ? 1.27 : 1.55, new(facts.IsHelped ? 175 : 140, 232));
        string view = facts.IsFromBehind ? "behind" : facts.Support == Support.BedFromAbove ? "above" : "side";
        _ink.Open($"data-picture=\"{(isStill ? "posture" : "way")}\" data-view=\"{view}\"");
        if (facts.IsFromBehind)
        {
            FromBehind();
        }
        else
        {
            FromSide();
        }

        _ink.Close();
        return new(Title(), Words(), _ink.ToString(), _ink.View);
    }

    private double SeatHeight => facts.Support switch
    {
        Support.Bed => BedTop,
        Support.TiltedChair => BedTop,
        _ => facts.HasRaisedSeat ? RaisedSeat : Seat,
    };

    private string Title() => facts switch
    {
        _ when isStill => "The posture",
        { IsHelped: true } => "Another person cleans",
        { Support: Support.Bed or Support.BedFromAbove } => "A person cleans in bed",
        { Support: Support.TiltedChair } => "A person cleans in a tilted chair",
        { Posture: Posture.Standing or Posture.HalfStanding } => "A person cleans standing at the toilet",
        { Support: Support.Commode } => "A person cleans on a commode",
        _ => "A person cleans on the toilet",
    };

    private string Words()
    {
        string on = facts.Support == Support.Commode ? "commode" : "toilet";
        string posture = facts.Posture switch
        {
            Posture.Seated when facts.Support == Support.Bed => "The person sits up in bed.",
            Posture.Seated => $"The person sits on the {on} with both feet flat.",
            Posture.SeatedLeaningForward when facts.Support == Support.Bed => "The person sits up in bed and leans forward.",
            Posture.SeatedLeaningForward => $"The person sits on the {on} with both feet flat and leans forward.",
            Posture.HalfStanding => $"The person has come half up from the {on} and holds on.",
            Posture.Standing => $"The person stands at the {on} and holds on.",
            Posture.SideLying => "Seen from above, the person lies on the side with the knees drawn up.",
            _ => facts.Support == Support.Bed ? "The person lies back in bed with the knees up." : "The person lies back in a tilted chair.",
        };
        if (facts is { Posture: Posture.Seated, Lean: > 0, IsFromBehind: false })
        {
            posture += " The trunk leans a little forward.";
        }

        if (facts.IsFromBehind)
        {
            string more = facts.Approach == Approach.Side
                ? facts.Posture is Posture.Seated or Posture.SeatedLeaningForward ? " One buttock is off the seat." : string.Empty
                : $" The trunk leans to {(facts.SideLean > 0 ? "the side of the cleaning hand" : "the other side")}.";
            posture = $"Seen from behind. {posture}{more}";
        }

        if (isStill)
        {
            return posture;
        }

        string what = facts.Form.Kind == AidFormKind.Hand ? "hand" : facts.Form.Sprays ? "washer" : "aid";
        string how = facts.IsHelped ? toHelper ? "You stand close by, and your gloved hand cleans." : "A helper stands close by. The helper's gloved hand cleans."
            : facts.Form.Kind == AidFormKind.Seat ? "Water comes up from under the seat."
            : facts.Approach is { } way ? $"An arrow shows how the {what} comes to the skin {PlanText.Way(way)}." : $"The {what} comes to the skin.";
        return $"{posture} {how}";
    }

    private void FromSide()
    {
        var figure = Figure.In(facts.Posture, facts.Lean, SeatHeight, facts.Support == Support.Bed);
        Furniture(figure);
        var (otherGrip, left) = OtherHand(figure);
        var otherElbow = isStill ? LowerElbow(figure.Shoulder, otherGrip) : Figure.Elbow(figure.Shoulder, otherGrip, left);
        if (!isStill && facts.IsHelped && facts.Support is Support.Bed or Support.TiltedChair)
        {
            HelperBehindBed(figure);
            Carrier(figure);
        }

        _ink.Limbs([.. Figure.Arm(figure.Shoulder, otherElbow, otherGrip), new("hand", otherGrip, 3.6, otherGrip, 3.6)]);
        _ink.Limbs(figure.Body(), more: " data-figure=\"person\"");
        if (isStill)
        {
            NearArm(figure, otherGrip, otherElbow);
            return;
        }

        _ink.Circle(figure.Skin, 2, Ink.Black);
        if (facts.IsHelped)
        {
            if (facts.Support is not (Support.Bed or Support.TiltedChair))
            {
                Helper(figure);
                return;
            }

            var shoulder = BehindBed(figure) - new Spot(13, 0);
            var grip = figure.Skin + ((shoulder - figure.Skin).Unit * 9);
            HelperArm(shoulder, Figure.Elbow(shoulder, grip, true), grip, figure.Skin);
            return;
        }

        if (facts.Form.Kind == AidFormKind.Seat)
        {
            WaterFromSeat(figure);
            return;
        }

        if (facts.Approach is { } approach)
        {
            if (approach == Approach.Side)
            {
                // Over the hip that is on top, from the head's side.
                var head = (figure.Shoulder - figure.Hip).Unit;
                Reach(figure.Shoulder, figure.Hip, figure.Skin, head * -1, Approach.Behind, _ => 0, figure.Skin + (head * 40) - (figure.Forward * 18));
                return;
            }

            Reach(figure.Shoulder, figure.Hip, figure.Skin, figure.Forward, approach, Blocked(figure, approach));
            if (approach == Approach.Front)
            {
                NearLeg(figure);
            }
        }
    }

    private void WaterFromSeat(Figure figure)
    {
        var nozzle = new Spot(figure.Skin.X - 9, SeatHeight - 11);
        _ink.Open($"data-aid=\"{facts.Form.Id}\" data-form=\"{facts.Form.Kind}\"");
        _ink.Tube([new(-26, SeatHeight - 7), nozzle], 2, Ink.Black);
        foreach (double aside in (double[])[0, 8, -8])
        {
            _ink.Line([nozzle, nozzle + ((figure.Skin - nozzle).Turned(aside) * 0.95)], 2.5, more: " stroke-dasharray=\"1 6\"");
        }

        _ink.Close();
        _ink.Arrow([nozzle + new Spot(8, -7), figure.Skin + new Spot(5, -4)], 4);
    }

    private static Spot LowerElbow(Spot shoulder, Spot grip)
    {
        var (a, b) = (Figure.Elbow(shoulder, grip, true), Figure.Elbow(shoulder, grip, false));
        return a.Y < b.Y ? a : b;
    }

    /// <summary>The arm that is not cleaning yet rests beside the other one.</summary>
    private void NearArm(Figure figure, Spot otherGrip, Spot otherElbow)
    {
        if (facts.HoldsOn || facts.Support == Support.BedFromAbove)
        {
            return;
        }

        var aside = new Spot(-3, -2);
        _ink.Limbs([.. Figure.Arm(figure.Shoulder, otherElbow + aside, otherGrip + aside), new("hand", otherGrip + aside, 3.8, otherGrip + aside, 3.8)]);
    }

    /// <summary>The arm with what it holds, and the arrow.</summary>
    private void Reach(Spot shoulder, Spot hip, Spot skin, Spot ahead, Approach approach, Func<Spot, double> blocked, Spot? comesFrom = null)
    {
        var tool = ToolPlace.Find(facts.Form, shoulder, hip, skin, ahead, approach, blocked);

        // Beside the hand and what it holds, on the side away from the body, and under both.
        var middle = (tool.Grip + skin) * 0.5;
        var from = comesFrom ?? (tool.Grip + ((tool.Grip - hip).Unit * 17) + ((tool.Grip - skin).Unit * 4));
        var to = skin + ((skin - hip).Unit * 7) - (tool.Heading * 4);
        _ink.Arrow(Ink.Curve(from, middle + ((middle - hip).Unit * 24), to), 4);
        new AidInk(_ink, facts.Form, tool.Place).Draw(thick: facts.HasThickHandle);
        var toward = facts.Form.Kind == AidFormKind.Hand ? tool.Heading : (tool.Place(new(3, 0)) - tool.Grip).Unit;
        _ink.Limbs(
            [
                .. Figure.Arm(shoulder, tool.Elbow, tool.Grip),
                new("hand", tool.Grip, 4.2, tool.Grip + (toward * (facts.Form.Kind == AidFormKind.Hand ? facts.Form.Length - 3 : 2)), facts.Form.Kind == AidFormKind.Hand ? 2.4 : 3.8),
            ],
            more: " data-figure=\"arm\"");
        if (facts.HasCuff)
        {
            _ink.Line([tool.Grip + (toward.Left * 4.4), tool.Grip - (toward.Left * 4.4)], 4);
        }

    }

    private static Func<Spot, double> Inside(Spot a, Spot b, double radius) => p =>
    {
        var line = b - a;
        double t = Math.Clamp((p - a).Dot(line) / Math.Max(line.Dot(line), 0.01), 0, 1);
        return Math.Max(radius - (p - a - (line * t)).Length, 0);
    };

    private Func<Spot, double> Blocked(Figure figure, Approach approach)
    {
        var trunk = Inside(figure.Hip, figure.Shoulder, 10);
        var pelvis = Inside(figure.Hip, figure.Hip, 10);
        var thigh = Inside(figure.Hip, figure.Knee, approach == Approach.Front ? 0 : 9);
        double seat = SeatHeight;
        bool isOver = facts.Support is Support.Toilet or Support.Commode && facts.Posture is Posture.Seated or Posture.SeatedLeaningForward;
        bool isLying = facts.Support is Support.Bed or Support.TiltedChair;
        return p =>
        {
            double held = isLying ? Math.Max(seat + 2 - p.Y, 0)
                : isOver && p.Y < seat + 2 ? p.X is > -19 and < 22 ? Math.Max(seat - 9 - p.Y, 0) : seat + 2 - p.Y
                : 0;
            return trunk(p) + pelvis(p) + thigh(p) + (2 * held);
        };
    }

    /// <summary>The near thigh once more in dashes, so that the hand is seen to be between the thighs.</summary>
    private void NearLeg(Figure figure)
    {
        var across = (figure.Knee - figure.Hip).Unit.Left * 8;
        var start = figure.Hip + ((figure.Knee - figure.Hip) * 0.2);
        _ink.Line([start + across, figure.Knee + (across * 0.75)], 2.5, more: " stroke-dasharray=\"7 6\"");
        _ink.Line([start - across, figure.Knee - (across * 0.75)], 2.5, more: " stroke-dasharray=\"7 6\"");
    }

    private (Spot Grip, bool Left) OtherHand(Figure figure) => facts.Posture switch
    {
        Posture.SideLying => (figure.Shoulder + new Spot(14, 34), true),
        Posture.Reclined => (figure.Hip + new Spot(-6, 14), false),
        Posture.Standing or Posture.HalfStanding => (RailAt(figure), false),
        _ => (figure.Knee + new Spot(-9, 10), true),
    };

    private static Spot RailAt(Figure figure) => new(figure.Shoulder.X + 38, Math.Min(figure.Shoulder.Y - 22, 92));

    private void Furniture(Figure figure)
    {
        if (facts.Support != Support.BedFromAbove)
        {
            _ink.Line([new(-100, 0), new(115, 0)], 3);
        }

        switch (facts.Support)
        {
            case Support.Toilet:
                Toilet();
                break;
            case Support.Commode:
                Commode();
                break;
            case Support.BedFromAbove:
                _ink.Open("data-support=\"bed-from-above\"");
                _ink.Shape([new(-112, 52), new(78, 52), new(78, -36), new(-112, -36)], Ink.White, 3);
                _ink.Shape([new(-108, 40), new(-66, 40), new(-66, -24), new(-108, -24)], Ink.Grey, 2);
                _ink.Close();
                break;
            default:
                Carrier(figure);
                break;
        }

        if (facts.HoldsOn)
        {
            var rail = RailAt(figure);
            _ink.Open("data-part=\"hold\"");
            _ink.Tube([rail + new Spot(-10, 0), rail + new Spot(16, 0), new(rail.X + 16, 0)], 3);
            _ink.Close();
        }
    }

    private void Toilet()
    {
        double top = SeatHeight - 2;
        _ink.Open("data-support=\"toilet\"");
        if (!facts.IsHelped)
        {
            _ink.Shape([new(-54, 42), new(-34, 42), new(-34, 78), new(-54, 78)], Ink.White);
        }

        _ink.Shape([new(-34, 41), .. Ink.Curve(new(-30, 30), new(-16, 18), new(-15, 0)), new(17, 0), .. Ink.Curve(new(17, 8), new(30, 20), new(33, 41))], Ink.Grey);
        _ink.Shape([new(-21, 41), .. Ink.Curve(new(-20, 36), new(-6, 14), new(4, 14)), .. Ink.Curve(new(4, 14), new(16, 16), new(25, 41))], Ink.White, 2);
        _ink.Line([new(-3, 18), new(12, 18)], 2);
        if (facts.HasRaisedSeat)
        {
            _ink.Shape([new(-33, 41), new(-21, 41), new(-21, top), new(-33, top)], Ink.White);
            _ink.Shape([new(25, 41), new(34, 41), new(34, top), new(25, top)], Ink.White);
        }

        _ink.Shape([new(-35, top + 3), new(-20, top + 3), new(-20, top), new(-35, top)], Ink.White);
        _ink.Shape([new(24, top + 3), new(36, top + 3), new(36, top), new(24, top)], Ink.White);
        if (facts.HasFootstool)
        {
            _ink.Shape([new(30, 0), new(62, 0), new(62, 1), new(30, 1)], Ink.Grey);
        }

        _ink.Close();
    }

    private void Commode()
    {
        double top = SeatHeight - 2;
        _ink.Open("data-support=\"commode\"");
        _ink.Tube([new(-33, 0), new(-33, facts.IsHelped ? top : 88)], 2.6, Ink.White);
        _ink.Tube([new(33, 0), new(33, top)], 2.6, Ink.White);
        _ink.Line([new(-33, 12), new(33, 12)], 3);
        _ink.Shape([new(-20, top), new(-14, 20), new(18, 20), new(24, top)], Ink.White);
        _ink.Shape([new(-36, top + 3), new(-20, top + 3), new(-20, top), new(-36, top)], Ink.Grey);
        _ink.Shape([new(24, top + 3), new(36, top + 3), new(36, top), new(24, top)], Ink.Grey);
        _ink.Close();
    }

    /// <summary>Bed or tilted chair, its back along the person's own.</summary>
    private void Carrier(Figure figure)
    {
        bool isBed = facts.Support == Support.Bed;
        var back = (figure.Shoulder - figure.Hip).Unit;
        if (facts.Posture == Posture.SeatedLeaningForward)
        {
            back = Spot.Toward(105);
        }

        var low = figure.Hip + (back.Left * 12) - (back * 6);
        var high = low + (back * 78);
        if (isBed)
        {
            _ink.Open("data-support=\"bed\"");
            _ink.Shape([new(-80, BedTop), new(105, BedTop), new(105, BedTop - 13), new(-80, BedTop - 13)], Ink.Grey);
            _ink.Line([new(-74, BedTop - 14), new(-74, 0)], 5);
            _ink.Line([new(98, BedTop - 14), new(98, 0)], 5);
            _ink.Shape([low, high, high + (back.Left * 8), low + (back.Left * 8)], Ink.Grey);
            _ink.Close();
            return;
        }

        _ink.Open("data-support=\"tilted-chair\"");
        var thigh = (figure.Knee - figure.Hip).Unit;
        var deep = back.Left * 7;

        // Behind and before the opening of the seat.
        var rear = figure.Hip - (back * 12) + (back.Left * 13);
        var under = figure.Hip + (thigh * 12) - (thigh.Left * 11);
        _ink.Line([rear, new(-14, 22), new(22, 22), under + (thigh * 14) - (thigh.Left * 5)], 6);
        _ink.Line([high + (deep * 0.5), high + (back * 4) + (back.Left * 18)], 6);
        _ink.Shape([low, high, high + deep, low + deep], Ink.Grey);
        _ink.Shape([high - (back * 20) - (back.Left * 3), high - (back * 2) - (back.Left * 3), high - (back * 2) + (back.Left * 2), high - (back * 20) + (back.Left * 2)], Ink.White);
        _ink.Shape([rear + deep, rear + (back * 10) + deep, rear + (back * 10) - (back.Left * 1), rear - (back.Left * 6), rear - (back.Left * 6) - (back * 4), rear + deep - (back * 4)], Ink.Grey);
        _ink.Shape([under, under + (thigh * 26), under + (thigh * 26) - (thigh.Left * 6), under - (thigh.Left * 6)], Ink.Grey);
        _ink.Line([new(-28, 9), new(-14, 22)], 6);
        _ink.Line([new(22, 22), new(40, 9)], 6);
        var foot = (figure.Toe - figure.Ankle).Unit;
        _ink.Line([under + (thigh * 24) - (thigh.Left * 6), figure.Ankle - (foot * 7) + (foot.Left * -5)], 5);
        _ink.Line([figure.Ankle - (foot * 7) + (foot.Left * -6), figure.Toe + (foot * 4) + (foot.Left * -4)], 6);
        _ink.Circle(new(-30, 8), 8);
        _ink.Circle(new(-30, 8), 2, Ink.Black);
        _ink.Circle(new(42, 8), 8);
        _ink.Circle(new(42, 8), 2, Ink.Black);
        _ink.Close();
    }

    private void Helper(Figure figure)
    {
        if (facts.Support == Support.BedFromAbove)
        {
            HelperFromAbove(figure);
            return;
        }

        bool stands = facts.Posture is Posture.Standing or Posture.HalfStanding;
        double lean = facts.Posture is Posture.Standing ? 20 : stands ? 30 : 50;
        var hip = new Spot(figure.Skin.X - (stands ? 48 : 60), stands ? 90 : 78);
        var helper = Figure.Of(hip, 90 - lean, stands ? -84 : -55, stands ? -98 : -120, 0, stands ? 84 - lean : 70, 0);
        HelperBody(helper, figure.Skin, false);
    }

    private void HelperBody(Figure helper, Spot skin, bool left)
    {
        var reach = (skin - helper.Shoulder).Unit;
        var grip = skin - (reach * (FigureBody.HandBeyondGrip - 4));
        double most = FigureBody.UpperArm + FigureBody.Forearm - 0.5;
        if ((grip - helper.Shoulder).Length > most)
        {
            grip = helper.Shoulder + ((grip - helper.Shoulder).Unit * most);
        }

        _ink.Limbs(helper.Body(), Ink.Grey, " data-figure=\"helper\"");
        HelperArm(helper.Shoulder, Figure.Elbow(helper.Shoulder, grip, left), grip, skin);
    }

    private void HelperArm(Spot shoulder, Spot elbow, Spot grip, Spot skin)
    {
        _ink.Limbs(Figure.Arm(shoulder, elbow, grip), Ink.Grey);
        _ink.Open($"data-aid=\"{facts.Form.Id}\" data-form=\"{facts.Form.Kind}\"");
        _ink.Limbs([new("hand", grip, 4.2, skin - ((skin - grip).Unit * 2), 2.8)], Ink.Black);
        _ink.Line([grip + ((grip - elbow).Unit.Left * 5.5), grip - ((grip - elbow).Unit.Left * 5.5)], 4, Ink.White);
        _ink.Close();
    }

    /// <summary>The helper at the side of the bed, seen from above: head over shoulders, arm to the skin.</summary>
    private void HelperFromAbove(Figure figure)
    {
        var middle = new Spot(figure.Skin.X - 6, figure.Skin.Y - 46);
        _ink.Limbs(
            [
                new("trunk", middle - new Spot(16, 0), 9, middle + new Spot(16, 0), 9),
            ],
            Ink.Grey,
            " data-figure=\"helper\"");
        _ink.Limbs([new("head", middle + new Spot(0, 3), 10, middle + new Spot(0, 4), 10)], Ink.Grey);
        var shoulder = middle + new Spot(20, 2);
        var grip = figure.Skin + new Spot(3, -10);
        HelperArm(shoulder, shoulder + new Spot(5, 16), grip, figure.Skin);
    }

    private static Spot BehindBed(Figure figure) => new(figure.Hip.X + 36, 116);

    /// <summary>The helper beyond the bed, seen from the front.</summary>
    private void HelperBehindBed(Figure figure)
    {
        var shoulders = BehindBed(figure);
        double x = shoulders.X;
        _ink.Limbs(
            [
                new("trunk", new(x, 60), 15, new(x, shoulders.Y - 10), 14),
                new("shoulders", shoulders - new Spot(13, 0), 7, shoulders + new Spot(13, 0), 7),
                new("neck", shoulders, 6, shoulders + new Spot(0, 18), 5),
                new("head", shoulders + new Spot(0, 22), FigureBody.Head, shoulders + new Spot(0, 24), FigureBody.Head - 1),
                new("leg", new(x - 8, 60), 8, new(x - 8, 5), 5),
                new("leg", new(x + 8, 60), 8, new(x + 8, 5), 5),
            ],
            Ink.Grey,
            " data-figure=\"helper\"");
    }

    private void FromBehind()
    {
        bool isSeated = facts.Posture is Posture.Seated or Posture.SeatedLeaningForward;
        double mirror = facts.IsLeft ? -1 : 1;
        Spot M(double x, double y) => new(x * mirror, y);
        double seat = SeatHeight;
        var hip = M(isSeated ? -4 : 0, isSeated ? seat + 11 : 90);
        bool lifts = facts.Approach == Approach.Side;

        // Off one buttock the trunk leans to the other side; else as far as the words say.
        double tilt = lifts ? isSeated ? 12 : 4 : 0, lean = lifts ? tilt + 8 : -facts.SideLean;
        var trunk = Spot.Toward(90 + (lean * mirror));
        var across = Spot.Toward(tilt * mirror) * mirror;
        var neck = hip + (trunk * FigureBody.ShoulderAboveHip);
        var shoulderLine = Spot.Toward((lifts ? tilt + 4 : lean * 0.8) * mirror) * mirror;
        var (near, far) = (neck + (shoulderLine * FigureBody.HalfShoulders), neck - (shoulderLine * FigureBody.HalfShoulders));
        BowlFromBehind(seat, isSeated);
        double halfPelvis = FigureBody.HalfHips - 10.5;
        bool holds = lifts || facts.HoldsOn;
        var otherGrip = holds ? isSeated ? M(-46, seat + 34) : M(-50, 88) : M(-25, seat + 16);
        if (holds)
        {
            RailFromBehind(otherGrip, mirror);
        }

        var otherElbow = Figure.Elbow(far, otherGrip, facts.IsLeft);
        _ink.Limbs(
            [
                new("head", neck + (trunk * 22), FigureBody.Head, neck + (trunk * 24), FigureBody.Head - 1),
                new("neck", neck, 6, neck + (trunk * 18), 5),
                new("shoulders", far, 6, near, 6),
                new("trunk", hip, 14, neck - (trunk * 8), 15),
                new("pelvis", hip - (across * halfPelvis), 10.5, hip + (across * halfPelvis), 10.5),
                .. Figure.Arm(far, otherElbow, otherGrip),
                new("hand", otherGrip, 4, otherGrip, 4),
                .. isSeated ? (Limb[])[] : [new("leg", hip - (across * 9), 9, M(-11, 8), 5), new("leg", hip + (across * 9), 9, M(11, 8), 5)],
            ],
            more: " data-figure=\"person\"");
        if (isStill)
        {
            var rest = isSeated ? M(25, seat + 16) : M(24, 84);
            _ink.Limbs([.. Figure.Arm(near, Figure.Elbow(near, rest, !facts.IsLeft), rest), new("hand", rest, 4, rest, 4)], more: " data-figure=\"arm\"");
            return;
        }

        var skin = hip - (trunk * 10.5);
        _ink.Circle(skin, 2, Ink.Black);
        var pelvis = Inside(hip - (across * halfPelvis), hip + (across * halfPelvis), 10);
        var body = Inside(hip, neck, 14);
        double opening = 13;
        if (!lifts)
        {
            // The hand is before the body here, and comes straight down to the skin.
            Reach(near, hip, skin, M(-0.3, 0), Approach.Behind, p => Math.Max(p.X * -mirror, 0) + (p.Y < seat + 2 && isSeated ? 2 : 0));
            return;
        }

        Reach(near, hip, skin, M(-1, 0), Approach.Behind, p => pelvis(p) + (body(p) * 0.5) + (isSeated && p.Y < seat + 1 ? Math.Abs(p.X) < opening ? Math.Max(seat - 7 - p.Y, 0) : 2 * (seat + 1 - p.Y) : 0));
    }

    private void RailFromBehind(Spot grip, double mirror)
    {
        _ink.Open("data-part=\"hold\"");
        _ink.Tube([grip, new(grip.X, 0)], 3);
        _ink.Tube([grip + new Spot(-10 * mirror, 0), grip + new Spot(8 * mirror, 0)], 3);
        _ink.Close();
    }

    /// <summary>The floor, the feet of who sits and the bowl, cut open.</summary>
    private void BowlFromBehind(double seat, bool isSeated)
    {
        _ink.Line([new(-90, 0), new(90, 0)], 3);
        if (isSeated)
        {
            foreach (double side in (double[])[1, -1])
            {
                _ink.Limbs([new("shank", new(side * 21, seat - 6), 6, new(side * 24, 9), 4.5), new("foot", new(side * 24, 6), 4.5, new(side * 27, 4), 4)]);
            }
        }

        _ink.Open($"data-support=\"{(facts.Support == Support.Commode ? "commode" : "toilet")}\"");
        _ink.Shape([new(-21, seat - 3), new(-14, 14), new(-13, 0), new(13, 0), new(14, 14), new(21, seat - 3)], Ink.Grey);
        _ink.Shape([new(-14, seat - 3), new(-7, 22), new(7, 22), new(14, seat - 3)], Ink.White, 2);
        _ink.Shape([new(-23, seat), new(-13, seat), new(-13, seat - 3), new(-23, seat - 3)]);
        _ink.Shape([new(23, seat), new(13, seat), new(13, seat - 3), new(23, seat - 3)]);
        _ink.Close();
    }
}
