namespace ToiletAid.App.Pictures;

/// <summary>Draws the form of an aid.</summary>
/// <param name="ink">Where to.</param>
/// <param name="form">The form.</param>
/// <param name="place">From the aid's own places, grip in the middle and handle to the right, to the picture.</param>
internal sealed class AidInk(Ink ink, AidForm form, Func<Spot, Spot> place)
{
    private bool IsLarge => ink.Scale > 3;

    /// <summary>The aid, with its paper or its water.</summary>
    internal void Draw(bool withPaper = true, bool withJet = true, bool thick = false, double level = 0)
    {
        ink.Open($"data-aid=\"{form.Id}\" data-form=\"{form.Kind}\"");
        switch (form.Kind)
        {
            case AidFormKind.Bottle or AidFormKind.Washer:
                Reservoir(level);
                break;
            case AidFormKind.Hose:
                Hose();
                break;
            case AidFormKind.Tongs:
                Tongs(withPaper);
                break;
            case AidFormKind.Hand:
                if (withPaper)
                {
                    Pad(2.2);
                }

                break;
            default:
                Handle(thick);
                Head(withPaper);
                break;
        }

        if (withJet && form.Sprays)
        {
            Jet();
        }

        ink.Close();
    }

    private IReadOnlyList<Spot> Placed(IEnumerable<Spot> own) => [.. own.Select(place)];

    private IReadOnlyList<Spot> Line(double from, double to, double aside = 0)
    {
        var spots = new List<Spot>();
        int points = Math.Max((int)((to - from) / 0.8), 2);
        for (int i = 0; i <= points; i++)
        {
            var (at, along) = form.AtLength(from + ((to - from) * i / points));
            spots.Add(at + (along.Left * aside));
        }

        return Placed(spots);
    }

    private Spot On(double s, double aside = 0)
    {
        var (at, along) = form.AtLength(s);
        return place(at + (along.Left * aside));
    }

    private void Handle(bool thick)
    {
        double head = form.Kind == AidFormKind.Jaws ? 5 : form.Kind == AidFormKind.TuckHead ? 1.2 : 3;
        ink.Tube(Line(0, form.Length - head), form.Kind == AidFormKind.WrapHead ? 1.3 : 1.5);
        ink.Tube(Line(-6, 6), thick ? 4.2 : 2.8, IsLarge ? Ink.Grey : Ink.Black);
        if (form.LetsGo && IsLarge)
        {
            ink.Tube(Line(3.2, 5.4, thick ? 2.8 : 2.1), 1.1, Ink.White);
        }

        for (int joint = 1; joint <= form.Joints; joint++)
        {
            ink.Circle(On(form.Length * joint / (form.Joints + 1)), IsLarge ? 1.3 : 1.6);
        }
    }

    private void Head(bool withPaper)
    {
        double l = form.Length, half = Math.Max(form.HeadWidth / 2, 0.8);
        switch (form.Kind)
        {
            case AidFormKind.Jaws:
                if (withPaper)
                {
                    Pad(half - 0.2);
                }

                ink.Tube([On(l - 5), On(l - 3.4, half + 0.4), On(l - 0.6, half + 0.1)], 0.9);
                ink.Tube([On(l - 5), On(l - 3.4, -half - 0.4), On(l - 0.6, -half - 0.1)], 0.9);
                break;
            case AidFormKind.TuckHead:
                if (withPaper)
                {
                    // Over the face and back into the slot on both sides.
                    ink.Tube([On(l - 1.6, 0.7), On(l - 1.2, half + 0.5), On(l + 0.6, half + 0.3), On(l + 1.4, 0), On(l + 0.6, -half - 0.3), On(l - 1.2, -half - 0.5), On(l - 1.6, -0.7)], 1.4, Ink.White);
                }

                ink.Tube([On(l - 0.4, half - 0.9), On(l - 0.4, -half + 0.9)], 1.9);
                break;
            case AidFormKind.WrapHead:
                ink.Tube(Line(l - 4, l + 2.2), form.HeadWidth);
                if (withPaper)
                {
                    ink.Tube(Line(l - 2.8, l + 1.6), form.HeadWidth + 0.9, Ink.White);
                    foreach (double s in (double[])[-2.2, -0.4, 1.4])
                    {
                        ink.Line([On(l + s - 0.5, half), On(l + s + 0.5, -half)], IsLarge ? 2 : 1);
                    }
                }

                break;
            default:
                ink.Tube([On(l, half - 0.8), On(l, -half + 0.8)], 2.2);
                break;
        }
    }

    private void Pad(double half) => ink.Tube(Line(form.Length - 2.4, form.Length + 1.2), Math.Max(half * 2, 2.2), Ink.White);

    private void Tongs(bool withPaper)
    {
        double l = form.Length;
        if (withPaper)
        {
            Pad(form.HeadWidth / 2);
        }

        foreach (double side in (double[])[1, -1])
        {
            var arm = new List<Spot>();
            for (int i = 0; i <= 14; i++)
            {
                double t = i / 14.0, open = (Math.Sin(Math.PI * Math.Min(t * 1.15, 1)) * 2.6) + (t * ((form.HeadWidth / 2) + 0.5));
                arm.Add(On(-6 + ((l + 5.6) * t), side * open));
            }

            ink.Tube(arm, 1.1);
        }
    }

    private void Reservoir(double level)
    {
        double half = form.Kind == AidFormKind.Bottle ? 3.4 : 2.6, top = Math.Min(6, form.Length * 0.5);
        Spot[] outline = [new(-10, half), new(top - 2, half), new(top, 1), new(top, -1), new(top - 2, -half), new(-10, -half)];
        ink.Tube(Line(top, form.Length), 1.2);
        ink.Shape(Placed(outline), IsLarge ? Ink.White : Ink.Grey);
        if (level > 0 && IsLarge)
        {
            double to = -10 + ((top + 8) * level);
            ink.Shape(Placed([new(-10, half), new(to, half), new(to, -half), new(-10, -half)]), Ink.Grey);
        }

        for (int joint = 1; joint <= Math.Max(form.Joints, form.Kind == AidFormKind.Washer ? 1 : 0) && IsLarge; joint++)
        {
            ink.Circle(On(top + 1), 0.9);
        }

        if (form.Kind == AidFormKind.Washer && IsLarge)
        {
            ink.Circle(place(new(0, half)), 0.9, Ink.Black);
        }
    }

    private void Hose()
    {
        ink.Line(Placed(Ink.Curve(new(-8, 0), new(-22, 2), new(-26, -18))), IsLarge ? 6 : 3);
        ink.Tube(Line(-8, form.Length), 1.8);
        ink.Tube(Line(-6, 5), 3, IsLarge ? Ink.Grey : Ink.Black);
        ink.Line(Placed([new(5, -1.5), new(2, -3.4), new(-3, -3.8)]), IsLarge ? 5 : 2);
        ink.Tube([On(form.Length - 1, 1.2), On(form.Length - 1, -1.2)], 1.6);
    }

    private void Jet()
    {
        var (at, along) = form.AtLength(form.Length);
        foreach (double aside in (double[])[0, 9, -9])
        {
            var way = along.Turned(aside);
            ink.Line(Placed([at + (way * 1.5), at + (way * Math.Max(form.Jet, 4))]), IsLarge ? 3 : 2.2, more: " stroke-dasharray=\"1 6\"");
        }
    }
}
