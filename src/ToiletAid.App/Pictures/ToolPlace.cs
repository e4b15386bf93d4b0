using ToiletAid.Core.Person;

namespace ToiletAid.App.Pictures;

/// <summary>Where hand and aid are when the face touches the skin: the best of many turns of the aid, by how it comes, what is in its way and whether the arm gets there.</summary>
internal sealed class ToolPlace
{
    private const double Turns = 72;

    private ToolPlace(AidForm form, double turn, double curl, Spot grip, Spot elbow)
    {
        Grip = grip;
        Elbow = elbow;
        Place = own => grip + new Spot(own.X, own.Y * curl).Turned(turn);
        Heading = new Spot(form.AtLength(form.Length).Along.X, form.AtLength(form.Length).Along.Y * curl).Turned(turn);
        Tip = Place(form.AtLength(form.Length).Place);
    }

    internal Spot Grip { get; }

    internal Spot Elbow { get; }

    /// <summary>The way the face goes.</summary>
    internal Spot Heading { get; }

    internal Spot Tip { get; }

    /// <summary>From the aid's own places to those of the scene.</summary>
    internal Func<Spot, Spot> Place { get; }

    /// <summary>Finds it.</summary>
    /// <param name="form">The aid, or the hand.</param>
    /// <param name="shoulder">Shoulder of the arm.</param>
    /// <param name="hip">Middle of the pelvis.</param>
    /// <param name="skin">What is reached.</param>
    /// <param name="ahead">The way the pelvis faces, or for a view from behind to the other side.</param>
    /// <param name="approach">The way.</param>
    /// <param name="blocked">How much a place is in the way of something, 0 for free.</param>
    internal static ToolPlace Find(AidForm form, Spot shoulder, Spot hip, Spot skin, Spot ahead, Approach approach, Func<Spot, double> blocked)
    {
        double sense = approach == Approach.Front ? -1 : 1;
        var wanted = ((hip - skin).Unit + (ahead * (sense * 0.8))).Unit;
        var (end, along) = form.AtLength(form.Length);
        end += along * (form.Sprays ? Math.Min(form.Jet, 12) : 1);
        ToolPlace? best = null;
        double least = double.PositiveInfinity;
        for (int i = 0; i < Turns; i++)
        {
            double turn = 360 * i / Turns;
            foreach (double curl in (double[])[1, -1])
            {
                var grip = skin - new Spot(end.X, end.Y * curl).Turned(turn);
                var heading = new Spot(along.X, along.Y * curl).Turned(turn);
                double far = (grip - shoulder).Length - (FigureBody.UpperArm + FigureBody.Forearm - 1), near = 18 - (grip - shoulder).Length;
                double cost = (8 * Math.Max(far, 0)) + Math.Max(near, 0) + (12 * (1 - heading.Dot(wanted))) + (blocked(grip) * 2) + (blocked(grip + new Spot(3, 0)) + blocked(grip - new Spot(3, 0)));
                cost += Math.Max(6 + (sense * (grip - skin).Dot(ahead)), 0) * 0.8;
                foreach (var own in form.MiddleLine(0).SkipLast(3))
                {
                    cost += blocked(grip + new Spot(own.X, own.Y * curl).Turned(turn)) * 0.5;
                }

                foreach (bool left in (bool[])[true, false])
                {
                    var elbow = Figure.Elbow(shoulder, grip, left);
                    double all = cost + (blocked(elbow) * 0.5) + (Math.Max(sense * (elbow - shoulder).Dot(ahead), 0) * 0.8);
                    if (all < least - 1e-6)
                    {
                        (least, best) = (all, new(form, turn, curl, grip, elbow));
                    }
                }
            }
        }

        return best!;
    }
}
