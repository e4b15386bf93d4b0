namespace ToiletAid.App.Pictures;

/// <summary>The aid by itself, close by: getting it ready, letting go, washing it, and its shape.</summary>
/// <param name="form">Its form.</param>
/// <param name="hasCuff">True when a strap holds the hand to it.</param>
/// <param name="isThick">True when its handle is built up.</param>
internal sealed class ToolDrawing(AidForm form, bool hasCuff = false, bool isThick = false)
{
    private static readonly Func<Spot, Spot> AsItIs = p => p;

    private string What => form.Kind == AidFormKind.Bottle ? "bottle" : form.Sprays ? "washer" : "aid";

    /// <summary>The shape by itself, with a scale.</summary>
    internal Drawing Shape()
    {
        double k = Math.Min(10, 250 / (form.Length + Math.Max(Math.Min(form.Jet, 12), 2) + 14));
        var ink = new Ink(k, new(20 + (12 * k), 150));
        ink.Open("data-picture=\"shape\"");
        switch (form.Kind)
        {
            case AidFormKind.Seat:
                return Seat();
            case AidFormKind.Hand or AidFormKind.Glove:
                k = 9;
                ink = new Ink(k, new(110, 120));
                ink.Open("data-picture=\"shape\"");
                ink.Open($"data-aid=\"{form.Id}\" data-form=\"{form.Kind}\"");
                OpenHand(ink, form.Kind == AidFormKind.Glove);
                ink.Close();
                break;
            default:
                Aid(ink).Draw(thick: isThick);
                break;
        }

        TenCentimetres(ink, -60);
        ink.Close();
        return new("The shape of the aid", form.Words(), ink.ToString(), ink.View);
    }

    /// <summary>Putting paper on.</summary>
    internal Drawing Load()
    {
        var (ink, tip, along) = Close();
        ink.Open("data-picture=\"load\"");
        Spot On(double s, double aside) => tip + (along * s) + (along.Left * aside);
        double half = Math.Max(form.HeadWidth / 2, 0.8);
        Aid(ink).Draw(withPaper: form.Kind is AidFormKind.WrapHead or AidFormKind.Tongs, thick: isThick);
        string how;
        switch (form.Kind)
        {
            case AidFormKind.WrapHead:
                ink.Arrow([.. Enumerable.Range(0, 15).Select(i => On(-1 + (2.2 * Math.Cos((i - 3) * 0.4)), 4.2 * Math.Sin((i - 3) * 0.4)))], 4);
                how = "Paper is wound round the head.";
                break;
            case AidFormKind.TuckHead:
                TuckIn(ink, On, half);
                how = "Paper lies over the head. Both its ends go into the slot behind.";
                break;
            case AidFormKind.Tongs:
                ink.Arrow([On(7, 0), On(2.2, 0)], 5);
                how = "Folded paper goes between the tips of the tongs.";
                break;
            default:
                OverJaws(ink, On, half);
                how = "Folded paper goes into the jaws and covers them.";
                break;
        }

        ink.Close();
        return new("Putting the paper on", how, ink.ToString(), ink.View);
    }

    /// <summary>Both ends still stick out behind; the slot is the black line at the back of the head.</summary>
    private static void TuckIn(Ink ink, Func<double, double, Spot> on, double half)
    {
        double wide = half + 0.9;
        ink.Line([on(-1.5, -half + 1.2), on(-1.5, half - 1.2)], 6);
        ink.Tube([.. Ink.Curve(on(-4.4, half + 2.6), on(-2.4, wide), on(-0.2, wide)), .. Ink.Curve(on(-0.2, wide), on(1.4, wide - 0.4), on(1.5, 0)), .. Ink.Curve(on(1.5, 0), on(1.4, -wide + 0.4), on(-0.2, -wide)), .. Ink.Curve(on(-0.2, -wide), on(-2.4, -wide), on(-4.4, -half - 2.6))], 1.1, Ink.White);
        foreach (double side in (double[])[1, -1])
        {
            ink.Arrow(Ink.Curve(on(-5.4, side * (half + 1.6)), on(-4.4, side * 1.4), on(-2, side * 0.9)), 4);
        }
    }

    /// <summary>The paper covers both jaws, which show through it in dashes.</summary>
    private static void OverJaws(Ink ink, Func<double, double, Spot> on, double half)
    {
        ink.Shape([.. Ink.Curve(on(-2.9, half + 1.3), on(2.6, half + 1.5), on(2.9, 0)), .. Ink.Curve(on(2.9, 0), on(2.6, -half - 1.5), on(-2.9, -half - 1.3)), .. Ink.Curve(on(-2.9, -half - 1.3), on(-2.2, 0), on(-2.9, half + 1.3))], Ink.White, 3);
        foreach (double side in (double[])[1, -1])
        {
            ink.Line([on(-2.4, side * (half + 0.4)), on(-0.6, side * (half + 0.1))], 4, more: " stroke-dasharray=\"7 7\"");
            ink.Line([on(-1.6, side * 0.5), on(2.4, side * 0.3)], 1.5);
        }

        ink.Arrow([on(7, 0), on(3.4, 0)], 5);
    }

    /// <summary>The hold, with a pull at the paper.</summary>
    internal Drawing Hold()
    {
        var ink = Whole(out _);
        ink.Open("data-picture=\"hold\"");
        Held(ink);
        var (at, along) = form.AtLength(form.Length);
        double k = ink.Scale;
        ink.Arrow([at + (along * (10 / k)), at + (along * (58 / k))], 5);
        ink.Close();
        return new("Checking the hold", $"A hand holds the {What} by its grip{Cuff}. An arrow shows the pull at the paper.", ink.ToString(), ink.View);
    }

    /// <summary>Filling it.</summary>
    internal Drawing Fill()
    {
        // Upright, the spout on top.
        var ink = new Ink(6.5, new(150, 150));
        ink.Open("data-picture=\"fill\"");
        new AidInk(ink, form, p => p.Turned(90)).Draw(withJet: false, level: 0.75);
        ink.Arrow([new(-12, 12), .. Ink.Curve(new(-12, 12), new(-10, 4), new(-4.5, 0)).Skip(1)], 5);
        Drop(ink, new(-14, 17), 1.6);
        Drop(ink, new(-10.5, 19), 1.2);
        ink.Close();
        return new("Filling with water", $"The {What} is filled with water nearly to the top.", ink.ToString(), ink.View);
    }

    /// <summary>Letting the paper go over the bowl.</summary>
    internal Drawing LetGo(LettingGo how)
    {
        double k = Math.Min(7, 215 / (form.Length + 8));
        var ink = new Ink(k, new(95, 150));
        ink.Open("data-picture=\"let-go\"");
        Bowl(ink);
        var (end, along) = form.AtLength(form.Length);

        // The face looks down, above the middle of the bowl.
        double turn = form.IsCurved ? -90 - along.Degrees : -50;
        var tip = new Spot(0, 32 / k);
        Func<Spot, Spot> place = p => (p - end).Turned(turn) + tip;
        new AidInk(ink, form, place).Draw(withPaper: how == LettingGo.ByHand, thick: isThick);
        Hand(ink, place, how == LettingGo.ByTheGrip);
        if (how == LettingGo.ByHand)
        {
            var sheet = tip + new Spot(4 / k, -6 / k);
            ink.Shape([sheet + new Spot(-24 / k, 16 / k), sheet + new Spot(26 / k, 20 / k), sheet + new Spot(30 / k, -14 / k), sheet + new Spot(-20 / k, -18 / k)]);
            ink.Limbs([new("hand", sheet + new Spot(52 / k, 6 / k), 16 / k, sheet + new Spot(12 / k, 2 / k), 9 / k), new("forearm", sheet + new Spot(52 / k, 6 / k), 14 / k, sheet + new Spot(150 / k, 40 / k), 18 / k)]);
            ink.Arrow([tip - new Spot(0, 30 / k), tip - new Spot(0, 66 / k)], 5);
        }
        else
        {
            var from = tip - (new Spot(0, 1) * (form.Kind == AidFormKind.WrapHead ? 3.4 : 1.6));
            var fallen = new Spot(0, -32 / k);
            ink.Arrow([from - new Spot(0, 3 / k), from - new Spot(0, 27 / k)], 5);
            Used(ink, fallen);
            if (how == LettingGo.AgainstTheBody)
            {
                var button = place(new(4, 3));
                var press = (place(new(4, 0)) - button).Unit;
                ink.Arrow([button - (press * (46 / k)), button - (press * (5 / k))], 6);
            }
        }

        ink.Close();
        string go = how switch
        {
            LettingGo.ByHand => $"A hand takes the used paper off with a clean sheet, over the toilet bowl.",
            LettingGo.AgainstTheBody => "The button at the grip is pressed. The used paper falls into the toilet bowl, and no hand touches it.",
            _ => "The grip lets go. The used paper falls into the toilet bowl, and no hand touches it.",
        };
        return new("Letting the paper go", go, ink.ToString(), ink.View);
    }

    /// <summary>Washing the aid under a tap.</summary>
    internal Drawing Wash()
    {
        double k = Math.Min(6, 200 / (form.Length + 12));
        var ink = new Ink(k, new(205, 150));
        ink.Open("data-picture=\"wash\"");
        var (end, _) = form.AtLength(form.Length);
        Func<Spot, Spot> place = p => (p - end).Turned(form.IsCurved ? -25 : -12) + new Spot(0, 0);
        ink.Tube([new(70 / k, 110 / k), new(70 / k, 122 / k), new(10 / k, 122 / k), new(2 / k, 114 / k), new(2 / k, 92 / k)], 22 / k, Ink.White);
        ink.Line([new(70 / k, 122 / k), new(70 / k, 136 / k)], 6);
        ink.Line([new(54 / k, 138 / k), new(86 / k, 138 / k)], 6);
        new AidInk(ink, form, place).Draw(withPaper: false, withJet: false, thick: isThick);
        Hand(ink, place, false);
        foreach (double x in (double[])[-6, 2, 10])
        {
            ink.Line([new(x / k, 84 / k), new(x / k, -52 / k)], 2.5, more: " stroke-dasharray=\"9 6\"");
        }

        foreach (var (x, y, r) in ((double, double, double)[])[(-34, 14, 9), (-48, 30, 6), (28, 12, 8), (40, 28, 5), (22, 32, 5)])
        {
            ink.Circle(new(x / k, y / k), r / k, Ink.White, 2);
        }

        ink.Line([.. Ink.Curve(new(-120 / k, -46 / k), new(0, -100 / k), new(100 / k, -46 / k))], 4);
        ink.Close();
        return new($"Washing the {What}", $"The {What} is held under a running tap with soap.", ink.ToString(), ink.View);
    }

    /// <summary>Wipes, or wipes and gloves, into the bin.</summary>
    internal static Drawing Bin(bool withGloves)
    {
        var ink = new Ink(1, new(0, 240));
        ink.Open("data-picture=\"bin\"");
        ink.Shape([new(30, 120), new(130, 120), new(120, 20), new(40, 20)], Ink.Grey, 3);
        ink.Line([new(30, 124), new(44, 190)], 7);
        ink.Arrow([new(92, 200), new(92, 140)], 5);
        ink.Shape([new(74, 232), new(112, 226), new(116, 206), new(72, 208)], Ink.White, 3);

        ink.Shape([new(190, 120), .. Ink.Curve(new(192, 80), new(222, 66), new(222, 20)), new(272, 20), .. Ink.Curve(new(272, 66), new(296, 80), new(300, 120))], Ink.White, 3);
        ink.Shape([new(186, 120), new(304, 120), new(304, 130), new(186, 130)], Ink.White, 3);
        ink.Line([new(180, 170), new(310, 16)], 12, Ink.White);
        ink.Line([new(310, 170), new(180, 16)], 12, Ink.White);
        ink.Line([new(180, 170), new(310, 16)], 7);
        ink.Line([new(310, 170), new(180, 16)], 7);
        ink.Close();
        return new("Using the bin", $"Used {(withGloves ? "wipes and gloves" : "wipes")} go into a bin with a lid. A toilet is crossed out.", ink.ToString(), ink.View);
    }

    private Drawing Seat()
    {
        var ink = new Ink(4, new(130, 150));
        ink.Open($"data-picture=\"shape\"><g data-aid=\"{form.Id}\" data-form=\"{form.Kind}\"");
        ink.Add("<ellipse cx=\"170\" cy=\"110\" rx=\"110\" ry=\"70\" fill=\"#ccc\" stroke=\"#111\" stroke-width=\"3\"/><ellipse cx=\"182\" cy=\"112\" rx=\"66\" ry=\"40\" fill=\"#fff\" stroke=\"#111\" stroke-width=\"3\"/>");
        ink.Room(new(-17.5, -7.5), 0.5);
        ink.Room(new(37.5, 27.5), 0.5);
        ink.Tube([new(-8, 9.5), new(5, 9.5)], 2.4);
        foreach (double a in (double[])[0, 12, -12])
        {
            ink.Line([new(6, 9.5), new Spot(6, 9.5) + (Spot.Toward(a) * 13)], 3, more: " stroke-dasharray=\"1 6\"");
        }

        if (form.IsPowered)
        {
            ink.Line(Ink.Curve(new(-16, 4), new(-34, 0), new(-26, -16)), 4);
            ink.Shape([new(-29, -16), new(-23, -16), new(-23, -20), new(-29, -20)]);
        }
        else
        {
            ink.Tube([new(24, -3), new(38, -9)], 1.8);
            ink.Circle(new(38, -9), 1.7, Ink.Black);
        }

        if (form.Dries)
        {
            foreach (double y in (double[])[4.5, 2.5])
            {
                ink.Line([new(-4, y), .. Ink.Curve(new(2, y + 1.5), new(6, y - 3), new(12, y))], 2.5);
            }
        }

        ink.Close();
        ink.Close();
        return new("The shape of the aid", form.Words(), ink.ToString(), ink.View);
    }

    private static void TenCentimetres(Ink ink, double down)
    {
        double k = ink.Scale, y = down / k;
        ink.Line([new(0, y), new(10, y)], 3);
        ink.Line([new(0, y + (5 / k)), new(0, y - (5 / k))], 3);
        ink.Line([new(10, y + (5 / k)), new(10, y - (5 / k))], 3);
        ink.Text(new(5, y - (22 / k)), "10 cm");
    }

    private string Cuff => hasCuff ? ", with a strap round the hand" : string.Empty;

    private AidInk Aid(Ink ink) => new(ink, form, AsItIs);

    /// <summary>The whole aid as large as it fits.</summary>
    private Ink Whole(out double k)
    {
        var (end, _) = form.AtLength(form.Length);
        k = Math.Min(Math.Min(8, 210 / (end.X + 14)), 120 / Math.Max(end.Y, 1));
        return new(k, new(30 + (9 * k), 150 + (end.Y * k * 0.25)));
    }

    /// <summary>The working end from near by.</summary>
    private (Ink Ink, Spot Tip, Spot Along) Close()
    {
        var (tip, along) = form.AtLength(form.Length);
        bool isHead = form.Kind is AidFormKind.TuckHead or AidFormKind.WrapHead;
        var (k, at) = isHead ? (15, new Spot(175, 105)) : (18, new Spot(150, 140));
        return (new(k, new(at.X - (tip.X * k), at.Y + (tip.Y * k))), tip, along);
    }

    private void Held(Ink ink)
    {
        Aid(ink).Draw(withJet: false, thick: isThick);
        Hand(ink, AsItIs, false);
    }

    /// <summary>A hand round the grip: palm behind, four fingers before it, and the forearm.</summary>
    private void Hand(Ink ink, Func<Spot, Spot> place, bool isOpening)
    {
        double reach = isThick || form.Sprays ? 3.4 : 2.3;
        ink.Limbs(
            [
                new("forearm", place(new(-34, -19)), 4.2, place(new(-4.5, -3.6)), 2.9),
                new("palm", place(new(-3.4, -reach)), 2.2, place(new(3.2, -reach)), 2),
            ]);
        for (int finger = 0; finger < 4; finger++)
        {
            double x = -3.6 + (finger * 2.2), out_ = isOpening ? 0.8 : 0;
            ink.Limbs([new("finger", place(new(x, -reach)), 1.15, place(new(x + 0.3, reach - 0.6 + out_)), 1.05)]);
        }

        ink.Limbs([new("thumb", place(new(2.4, -reach - 0.2)), 1.4, place(new(6.2, -0.6)), 1.05)]);
        if (hasCuff)
        {
            ink.Line([place(new(-4.9, -reach - 2)), place(new(4.6, -reach - 2.2))], Math.Max(ink.Scale * 1.3, 5));
        }
    }

    private static void OpenHand(Ink ink, bool isGloved)
    {
        string fill = isGloved ? Ink.Grey : Ink.White;
        ink.Limbs(
            [
                new("forearm", new(-14, -2), 3.6, new(-6, 0), 3.1),
                new("palm", new(-4, 0), 4, new(3, 0), 4.2),
                new("finger", new(3, 3), 1.3, new(11, 4.4), 1.1),
                new("finger", new(3, 1), 1.3, new(12.6, 1.6), 1.1),
                new("finger", new(3, -1), 1.3, new(12.2, -1.2), 1.1),
                new("finger", new(3, -3), 1.2, new(10, -3.6), 1),
                new("thumb", new(-3, 3), 1.6, new(2.6, 8), 1.2),
            ],
            fill);
        if (isGloved)
        {
            ink.Line([new(-8.4, 4), new(-8.4, -4.6)], 8);
        }
        else
        {
            ink.Shape([new(4, -5), new(14.5, -5.5), new(15, 0.4), new(5, 0.6)], Ink.White);
            ink.Line([new(4.6, -2.2), new(14.6, -2.6)], 1.5);
        }
    }

    private static void Bowl(Ink ink)
    {
        double k = ink.Scale;
        Spot S(double x, double y) => new(x / k, y / k);
        ink.Shape([S(-66, -10), .. Ink.Curve(S(-62, -40), S(-38, -58), S(-32, -78)), S(34, -78), .. Ink.Curve(S(40, -58), S(60, -40), S(66, -10))], Ink.Grey, 3);
        ink.Shape([S(-54, -10), .. Ink.Curve(S(-50, -36), S(-26, -64), S(0, -64)), .. Ink.Curve(S(0, -64), S(30, -62), S(54, -10))], Ink.White, 2.5);
        ink.Line([S(-26, -52), S(26, -52)], 2.5);
        ink.Shape([S(-70, -2), S(-46, -2), S(-46, -12), S(-70, -12)], Ink.White, 2.5);
        ink.Shape([S(70, -2), S(46, -2), S(46, -12), S(70, -12)], Ink.White, 2.5);
    }

    /// <summary>Paper that was wiped with.</summary>
    private static void Used(Ink ink, Spot middle)
    {
        double k = ink.Scale;
        Spot S(double x, double y) => middle + new Spot(x / k, y / k);
        ink.Shape([S(-26, 10), S(-10, 16), S(6, 11), S(24, 18), S(29, -4), S(20, -15), S(2, -11), S(-18, -16)], Ink.White, 3);
        ink.Shape([S(-8, 5), S(6, 6), S(12, -1), S(3, -6), S(-8, -4)], Ink.Black, 1);
    }

    private static void Drop(Ink ink, Spot at, double size) =>
        ink.Shape([at + new Spot(0, size * 1.8), .. Ink.Curve(at + new Spot(size * 0.9, 0), at + new Spot(size, -size), at + new Spot(0, -size)), .. Ink.Curve(at + new Spot(0, -size), at + new Spot(-size, -size), at + new Spot(-size * 0.9, 0))], Ink.Grey, 2);
}
