namespace ToiletAid.Core.Catalogue;

/// <summary>What the hand does in a step, which sets the grasps that can do it and the strength that counts.</summary>
public enum HandAct
{
    /// <summary>Keep a handle in the hand while the arm moves it: a power grip, or a hand that hangs from a strap.</summary>
    HoldHandle,

    /// <summary>Press fingers against the palm: a bottle, tongs, a trigger, a locked handle.</summary>
    Squeeze,

    /// <summary>Fold, tuck, thread or turn small things between thumb and fingers.</summary>
    PinchAndTuck,

    /// <summary>Press a lever or button with whatever presses: a finger, palm, fist or forearm.</summary>
    PressLever,

    /// <summary>Push the aid's button against thigh, hip or seat.</summary>
    PushAgainstThigh,

    /// <summary>Move paper or a wipe with the hand itself.</summary>
    WipeByHand,

    /// <summary>Handle something that stands or lies by itself, as when rinsing.</summary>
    Steady,
}
