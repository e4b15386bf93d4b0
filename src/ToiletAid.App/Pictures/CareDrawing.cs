using System.Globalization;

namespace ToiletAid.App.Pictures;

/// <summary>What is done at the skin and round it, for who goes by pictures: the buttocks from behind, paper, water, hands.</summary>
internal static class CareDrawing
{
    /// <summary>Wiping.</summary>
    /// <param name="frontToBack">True when the way has a direction.</param>
    internal static Drawing Wipe(bool frontToBack)
    {
        var ink = Skin("wipe");
        ink.Shape([new(-20, -96), new(20, -96), new(20, -68), new(-20, -68)], Ink.White, 3);
        ink.Line([new(-20, -82), new(20, -82)], 1.5);
        ink.Arrow([new(0, -62), new(0, 44)], 7);
        ink.Close();
        return Made(ink, "Wiping", frontToBack ? "Paper wipes from the front to the back." : "Paper wipes the skin between the buttocks.");
    }

    /// <summary>Washing.</summary>
    internal static Drawing Wash()
    {
        var ink = Skin("wash");
        foreach (double x in (double[])[-14, 0, 14])
        {
            ink.Line([new(x * 1.4, -104), new(x * 0.4, -26)], 4, more: " stroke-dasharray=\"2 9\"");
        }

        ink.Arrow([new(34, -100), new(16, -40)], 6);
        ink.Close();
        return Made(ink, "Washing", "Water comes to the skin between the buttocks.");
    }

    /// <summary>Drying with air.</summary>
    internal static Drawing Air()
    {
        var ink = Skin("air");
        foreach (double x in (double[])[-22, 0, 22])
        {
            ink.Line([.. Ink.Curve(new(x, -104), new(x + 16, -92), new(x, -80)), .. Ink.Curve(new(x, -80), new(x - 16, -68), new(x, -56))], 4);
            ink.Arrow([new(x * 0.9, -54), new(x * 0.5, -30)], 4);
        }

        ink.Close();
        return Made(ink, "Drying with air", "Air blows on the skin between the buttocks.");
    }

    /// <summary>Patting with soft paper.</summary>
    internal static Drawing Pat()
    {
        var ink = Skin("pat");
        ink.Shape([new(-26, 22), new(26, 22), new(26, -20), new(-26, -20)], Ink.White, 3.5);
        foreach (double side in (double[])[1, -1])
        {
            ink.Arrow([new(side * 88, 2), new(side * 40, 2)], 6);
        }

        ink.Close();
        return Made(ink, "Patting with paper", "Soft paper is pressed on the skin between the buttocks. Nothing is rubbed.");
    }

    /// <summary>Looking at the last paper.</summary>
    internal static Drawing LookAtPaper()
    {
        var ink = Blank("look");
        Sheet(ink, -78);
        ink.Shape([new(-96, 14), new(-70, 20), new(-56, 4), new(-72, -14), new(-94, -8)], Ink.Black, 1);
        ink.Line([new(-112, -64), new(-44, -108)], 8);
        ink.Line([new(-44, -64), new(-112, -108)], 8);
        Sheet(ink, 78);
        ink.Line([new(44, -84), new(68, -106), new(114, -60)], 9);
        ink.Close();
        return Made(ink, "Looking at the paper", "A paper with soil has a cross. A paper that stayed clean has a tick.");
    }

    /// <summary>Somebody else looks.</summary>
    internal static Drawing SomebodyLooks()
    {
        var ink = Skin("looked-at");
        Eye(ink, new(112, 66));
        ink.Line([new(88, 50), new(24, 10)], 3, more: " stroke-dasharray=\"9 7\"");
        ink.Close();
        return Made(ink, "Another person looks", "An eye looks at the skin between the buttocks.");
    }

    /// <summary>Looking at the skin with a mirror.</summary>
    internal static Drawing Mirror()
    {
        var ink = Blank("mirror");
        ink.Tube([new(40, -44), new(96, -100)], 14);
        ink.Circle(new(0, 0), 66, Ink.Grey, 4);
        ink.Circle(new(0, 0), 56, Ink.White, 3);
        ink.Line(Ink.Curve(new(-46, 26), new(-30, -44), new(0, -26)), 3);
        ink.Line(Ink.Curve(new(46, 26), new(30, -44), new(0, -26)), 3);
        ink.Line([new(0, 30), new(0, -26)], 3);
        Eye(ink, new(-112, 70));
        ink.Line([new(-88, 54), new(-54, 32)], 3, more: " stroke-dasharray=\"9 7\"");
        ink.Close();
        return Made(ink, "Looking with a mirror", "An eye looks into a hand mirror, which shows the skin.");
    }

    /// <summary>Washing the hands.</summary>
    internal static Drawing Hands()
    {
        var ink = Blank("hands");
        ink.Tube([new(70, 84), new(70, 98), new(8, 98), new(0, 90), new(0, 70)], 22, Ink.White);
        ink.Line([new(70, 98), new(70, 112)], 7);
        ink.Line([new(50, 114), new(90, 114)], 7);
        foreach (double x in (double[])[-7, 0, 7])
        {
            ink.Line([new(x, 60), new(x, -96)], 2.5, more: " stroke-dasharray=\"9 6\"");
        }

        foreach (double side in (double[])[-1, 1])
        {
            ink.Limbs(
                [
                    new("forearm", new(side * 128, -34 + (side * 14)), 17, new(side * 62, -6 + (side * 6)), 14),
                    new("palm", new(side * 58, -5 + (side * 6)), 18, new(side * 18, 2 + (side * 6)), 17),
                    new("finger", new(side * 14, 10 + (side * 6)), 7, new(side * -26, 14 + (side * 8)), 6),
                    new("finger", new(side * 14, -2 + (side * 6)), 7, new(side * -30, 0 + (side * 8)), 6),
                    new("finger", new(side * 14, -12 + (side * 6)), 7, new(side * -22, -14 + (side * 8)), 6),
                ]);
        }

        foreach (var (x, y, r) in ((double, double, double)[])[(-50, 40, 11), (-72, 56, 7), (46, 44, 9), (64, 34, 6), (-34, 60, 6)])
        {
            ink.Circle(new(x, y), r, Ink.White, 2.5);
        }

        ink.Close();
        return Made(ink, "Washing the hands", "Two hands are washed with soap under a running tap.");
    }

    /// <summary>Water that is not too warm.</summary>
    /// <param name="celsius">What it is never warmer than.</param>
    internal static Drawing Warmth(double celsius)
    {
        var ink = Blank("warmth");
        double top = 70, mark = 24;
        ink.Tube([new(0, -64), new(0, top)], 34, Ink.White);
        ink.Circle(new(0, -78), 28, Ink.Black);
        ink.Line([new(0, -70), new(0, mark - 16)], 14);
        ink.Line([new(-34, mark), new(34, mark)], 6);
        string text = celsius.ToString("0", CultureInfo.InvariantCulture);
        ink.Text(new(66, mark - 6), text, 30);
        ink.Line([new(44, mark + 66), new(84, mark + 26)], 7);
        ink.Line([new(84, mark + 66), new(44, mark + 26)], 7);
        ink.Close();
        return Made(ink, "How warm the water is", $"A thermometer stays below {text} degrees Celsius. Above that is a cross.");
    }

    /// <summary>Wipes and a bin at hand.</summary>
    internal static Drawing WipesReady()
    {
        var ink = Blank("ready");
        ink.Shape([new(-130, -40), new(-20, -40), new(-20, 14), new(-130, 14)], Ink.White, 3.5);
        ink.Shape([new(-96, 14), new(-54, 14), new(-54, 4), new(-96, 4)], Ink.Grey, 2.5);
        ink.Shape([new(-90, 8), .. Ink.Curve(new(-90, 40), new(-70, 60), new(-52, 50)), new(-60, 8)], Ink.White, 3);
        ink.Shape([new(34, 20), new(128, 20), new(118, -84), new(44, -84)], Ink.Grey, 3.5);
        ink.Shape([new(28, 34), new(134, 34), new(134, 20), new(28, 20)], Ink.White, 3.5);
        ink.Close();
        return Made(ink, "Wipes and bin", "A pack of wipes and a bin with a lid are at hand.");
    }

    private static Ink Blank(string kind)
    {
        var ink = new Ink(1, new(160, 120));
        ink.Open($"data-picture=\"{kind}\"");
        return ink;
    }

    /// <summary>The buttocks from behind, with the back above and the thighs below.</summary>
    private static Ink Skin(string kind)
    {
        var ink = Blank(kind);
        ink.Limbs(
            [
                new("back", new(-22, 104), 32, new(-30, 40), 40),
                new("back", new(22, 104), 32, new(30, 40), 40),
                new("buttock", new(-38, 12), 46, new(-40, 0), 46),
                new("buttock", new(38, 12), 46, new(40, 0), 46),
                new("thigh", new(-46, -20), 38, new(-58, -100), 30),
                new("thigh", new(46, -20), 38, new(58, -100), 30),
            ]);
        ink.Line([new(0, 56), new(0, -34)], 3);
        ink.Line(Ink.Curve(new(0, -34), new(-26, -54), new(-62, -40)), 3);
        ink.Line(Ink.Curve(new(0, -34), new(26, -54), new(62, -40)), 3);
        return ink;
    }

    private static void Sheet(Ink ink, double x) => ink.Shape([new(x - 44, 56), new(x + 40, 60), new(x + 46, -44), new(x - 40, -48)], Ink.White, 3.5);

    private static void Eye(Ink ink, Spot at)
    {
        ink.Shape([.. Ink.Curve(at - new Spot(34, 0), at + new Spot(0, 40), at + new Spot(34, 0)), .. Ink.Curve(at + new Spot(34, 0), at - new Spot(0, 40), at - new Spot(34, 0))], Ink.White, 3.5);
        ink.Circle(at, 12, Ink.Black);
    }

    private static Drawing Made(Ink ink, string title, string words) => new(title, words, ink.ToString(), ink.View);
}
