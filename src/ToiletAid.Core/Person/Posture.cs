namespace ToiletAid.Core.Person;

/// <summary>Posture while cleaning.</summary>
public enum Posture
{
    /// <summary>Seated upright on the toilet or commode.</summary>
    Seated,

    /// <summary>Seated, trunk forward, buttocks partly off the seat.</summary>
    SeatedLeaningForward,

    /// <summary>Half-standing: hips and knees bent, buttocks off the seat.</summary>
    HalfStanding,

    /// <summary>Standing.</summary>
    Standing,

    /// <summary>Lying on one side.</summary>
    SideLying,

    /// <summary>Reclined in bed or in a tilted chair.</summary>
    Reclined,
}
