using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>Applies add-ons and the person's handling to one operation.</summary>
internal static class TaskMaking
{
    private const int WholeHandBit = 1 << (int)Grasp.WholeHand;

    /// <summary>Makes one operation ready.</summary>
    public static HandTask Task(
        Aid aid, Operation operation, HandHelp help, HoldDemand hold, HandFacts person, double slowness, HandCoefficients coefficients)
    {
        bool prepared = help.PreparedPaper && operation.Kind == OperationKind.Load && aid.Paper is { Hold: PaperHold.Pad };
        var fine = prepared ? FineHandling.None : operation.Fine;
        int hands = prepared ? 1 : operation.Hands;

        // Slow fingers stretch what they do with small things, and the effort with it.
        double stretch = fine == FineHandling.None ? 1 : slowness * coefficients.TremorTime(person.Tremor);
        double seconds = operation.Duration.Value * operation.Repetitions * stretch;
        double newtons = operation.Force.Value + (operation.Kind == OperationKind.Hold ? hold.GripNewtons : 0);
        var act = operation.Act ?? HandActs.Usual(operation.Kind, operation.Grasps, operation.AgainstTheBody, aid.Reach);
        bool gripped = operation.Kind is OperationKind.Hold or OperationKind.Clean or OperationKind.Release;
        return new()
        {
            Kind = operation.Kind,
            Newtons = newtons,
            WholeHandNewtons = gripped ? newtons * help.GripShare : newtons,
            AcceptableShare = AcceptableEffort.Share(seconds, person.CleansPerDay, coefficients),
            Grasps = Bits(operation.Grasps, act) | (prepared ? WholeHandBit : 0),
            WholeHandShare = act == HandAct.PinchAndTuck ? coefficients.PinchShareOfGrip : 1,
            AgainstTheBody = operation.AgainstTheBody,
            Strapped = help.Strap && act == HandAct.HoldHandle,
            Obstacle = ObstacleTo(hands, operation, fine, person, slowness, coefficients),
            Miss = 1 - ((1 - coefficients.SlowMiss(slowness, fine)) * (1 - coefficients.TremorMiss(person.Tremor, fine))),
            Seconds = seconds,
        };
    }

    private static HandlingObstacle ObstacleTo(
        int hands, Operation operation, FineHandling fine, HandFacts person, double slowness, HandCoefficients coefficients)
    {
        // An aid pressed against the body is steadied by it, which is what the second hand would do.
        bool tooFewHands = hands > person.HandsFree && !operation.AgainstTheBody;
        return tooFewHands ? HandlingObstacle.NeedsTwoHands
            : fine == FineHandling.Much && slowness >= coefficients.SlownessCannot ? HandlingObstacle.NeedsFineHandling
            : HandlingObstacle.None;
    }

    /// <summary>Grasps that the file lists and that can do what the hand must do: a palm that presses holds no handle, whatever a file says.</summary>
    private static int Bits(ImmutableArray<Grasp> grasps, HandAct act)
    {
        int bits = 0;
        foreach (var grasp in grasps)
        {
            bits |= act.Can(grasp) ? 1 << (int)grasp : 0;
        }

        return bits;
    }
}
