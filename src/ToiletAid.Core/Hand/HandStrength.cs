using System.Runtime.InteropServices;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>The greatest force of one hand in each grasp, N; 0 where the grasp cannot be used.</summary>
/// <param name="Pinch">Fine pinch.</param>
/// <param name="Grip">Whole hand.</param>
/// <param name="Palm">Press with palm or fist.</param>
/// <param name="Forearm">Press with the forearm.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HandStrength(double Pinch, double Grip, double Palm, double Forearm)
{
    /// <summary>The strongest of all grasps, N.</summary>
    public double Greatest => Math.Max(Math.Max(Pinch, Grip), Math.Max(Palm, Forearm));

    /// <summary>The greatest force in one grasp, N.</summary>
    /// <param name="grasp">The grasp; none gives 0.</param>
    public double Of(Grasp grasp) => grasp switch
    {
        Grasp.FinePinch => Pinch,
        Grasp.WholeHand => Grip,
        Grasp.PressWithPalmOrFist => Palm,
        Grasp.PressWithForearm => Forearm,
        _ => 0,
    };
}
