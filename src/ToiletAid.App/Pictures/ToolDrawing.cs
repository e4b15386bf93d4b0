using ToiletAid.App.Documents;

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
        double l = form.Length;
        var (ink, tip, along) = Close();
        ink.Open("data-picture=\"load\"");
        bool winds = form.Kind == AidFormKind.WrapHead, tucks = form.Kind == AidFormKind.TuckHead;
        Aid(ink).Draw(thick: isThick);
        string how;
        if (winds)
        {
            var middle = tip - (along * 1);
            ink.Arrow([.. Enumerable.Range(0, 15).Select(i => middle + (along.Left * (4.2 * Math.Sin((i - 3) * 0.4))) + (along * (2.2 * Math.Cos((i - 3) * 0.4))))], 4);
            how = "Paper is wound round the head.";
        }
        else if (tucks)
        {
            double half = (form.HeadWidth / 2) + 1.6;
            ink.Arrow(Ink.Curve(tip + (along.Left * half) + (along * 2.5), tip + (along.Left * (half + 1)) - (along * 1.5), tip + (along.Left * 1.2) - (along * 3)), 4);
            ink.Arrow(Ink.Curve(tip - (along.Left * half) + (along * 2.5), tip - (along.Left * (half + 1)) - (along * 1.5), tip - (along.Left * 1.2) - (along * 3)), 4);
            how = "Paper lies over the head. Both its ends go into the slot behind.";
        }
        else
        {
            ink.Arrow([tip + (along * 7), tip + (along * 2.2)], 5);
            how = form.Kind == AidFormKind.Tongs ? "Folded paper goes between the tips of the tongs." : "Folded paper goes into the jaws.";
        }

        ink.Close();
        return new("Putting the paper on", how, ink.ToString(), ink.View);
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
        double k = Math.Min(5.5, 170 / (form.Length + 12));
        var ink = new Ink(k, new(130, 112));
        ink.Open("data-picture=\"let-go\"");
        Bowl(ink);
        var (end, along) = form.AtLength(form.Length);

        // The face looks down, above the middle of the bowl.
        double turn = -90 - along.Degrees;
        if (!form.IsCurved)
        {
            turn = -50;
        }

        var tip = new Spot(0, 8 / k);
        Func<Spot, Spot> place = p => (p - end).Turned(turn) + tip;
        new AidInk(ink, form, place).Draw(withPaper: how == LettingGo.ByHand, thick: isThick);
        Hand(ink, place, how == LettingGo.ByTheGrip);
        var below = tip - new Spot(0, 30 / k);
        if (how == LettingGo.ByHand)
        {
            var sheet = tip + new Spot(4 / k, -6 / k);
            ink.Shape([sheet + new Spot(-24 / k, 16 / k), sheet + new Spot(26 / k, 20 / k), sheet + new Spot(30 / k, -14 / k), sheet + new Spot(-20 / k, -18 / k)]);
            ink.Limbs([new("hand", sheet + new Spot(52 / k, 6 / k), 16 / k, sheet + new Spot(12 / k, 2 / k), 9 / k), new("forearm", sheet + new Spot(52 / k, 6 / k), 14 / k, sheet + new Spot(150 / k, 40 / k), 18 / k)]);
            ink.Arrow([below, below - new Spot(0, 34 / k)], 5);
        }
        else
        {
            ink.Arrow([tip - new Spot(0, 8 / k), below], 5);
            var fallen = below - new Spot(0, 22 / k);
            ink.Shape([fallen + new Spot(-16 / k, 8 / k), fallen + new Spot(14 / k, 14 / k), fallen + new Spot(18 / k, -6 / k), fallen + new Spot(-12 / k, -12 / k)]);
            if (how == LettingGo.AgainstTheBody)
            {
                var button = place(new(4, 3));
                var press = (place(new(4, 0)) - button).Unit;
                ink.Arrow([button - (press * (40 / k)), button - (press * (4 / k))], 5);
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
        const double K = 15;
        return (new(K, new(175 - (tip.X * K), 105 + (tip.Y * K))), tip, along);
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
        ink.Shape([S(-92, -50), .. Ink.Curve(S(-88, -84), S(-52, -104), S(-44, -124)), S(50, -124), .. Ink.Curve(S(56, -104), S(84, -84), S(92, -50))], Ink.Grey, 3);
        ink.Shape([S(-78, -50), .. Ink.Curve(S(-74, -78), S(-40, -110), S(0, -110)), .. Ink.Curve(S(0, -110), S(46, -108), S(78, -50))], Ink.White, 2.5);
        ink.Line([S(-38, -98), S(38, -98)], 2.5);
        ink.Shape([S(-98, -42), S(-66, -42), S(-66, -52), S(-98, -52)], Ink.White, 2.5);
        ink.Shape([S(98, -42), S(66, -42), S(66, -52), S(98, -52)], Ink.White, 2.5);
    }

    private static void Drop(Ink ink, Spot at, double size) =>
        ink.Shape([at + new Spot(0, size * 1.8), .. Ink.Curve(at + new Spot(size * 0.9, 0), at + new Spot(size, -size), at + new Spot(0, -size)), .. Ink.Curve(at + new Spot(0, -size), at + new Spot(-size, -size), at + new Spot(-size * 0.9, 0))], Ink.Grey, 2);
}
