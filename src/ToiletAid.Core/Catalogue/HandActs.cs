using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Catalogue;

/// <summary>Rules of <see cref="HandAct"/>.</summary>
public static class HandActs
{
    /// <summary>True when the grasp can do the act. A press with palm, fist or forearm holds no handle, squeezes nothing and folds nothing.</summary>
    /// <param name="act">What the hand does.</param>
    /// <param name="grasp">The grasp.</param>
    public static bool Can(this HandAct act, Grasp grasp) => act switch
    {
        HandAct.HoldHandle => grasp == Grasp.WholeHand,
        HandAct.Squeeze or HandAct.PinchAndTuck => grasp is Grasp.FinePinch or Grasp.WholeHand,
        _ => grasp != Grasp.None,
    };

    /// <summary>The act of a step whose file does not say it.</summary>
    /// <param name="kind">Which step.</param>
    /// <param name="grasps">Grasps that the file lists.</param>
    /// <param name="againstTheBody">True when it can be done against thigh, hip or seat.</param>
    /// <param name="reach">What brings the aid to the skin.</param>
    public static HandAct Usual(OperationKind kind, ImmutableArray<Grasp> grasps, bool againstTheBody, ReachKind reach)
    {
        bool presses = grasps.Contains(Grasp.PressWithPalmOrFist) || grasps.Contains(Grasp.PressWithForearm);
        return kind switch
        {
            OperationKind.Hold => HandAct.HoldHandle,
            OperationKind.Load => presses ? HandAct.PressLever : HandAct.PinchAndTuck,
            OperationKind.Clean when reach == ReachKind.BareHand => HandAct.WipeByHand,
            OperationKind.Clean when !presses => HandAct.Squeeze,
            OperationKind.Clean when reach == ReachKind.Handle => HandAct.HoldHandle,
            OperationKind.Clean => HandAct.PressLever,
            OperationKind.Release when againstTheBody => HandAct.PushAgainstThigh,
            OperationKind.Release when presses => HandAct.PressLever,
            OperationKind.Release => HandAct.Squeeze,
            _ => HandAct.Steady,
        };
    }
}
