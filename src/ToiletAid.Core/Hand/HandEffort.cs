using System.Runtime.InteropServices;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>The easiest way in which one hand does one task.</summary>
/// <param name="Grasp">Grasp used; none when there is none or none is needed.</param>
/// <param name="Newtons">Force asked for, N.</param>
/// <param name="Capacity">Greatest force in that grasp, N.</param>
/// <param name="Ratio">Force asked for over acceptable force; infinite when no grasp is usable.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct HandEffort(Grasp Grasp, double Newtons, double Capacity, double Ratio)
{
    /// <summary>The easiest way.</summary>
    public static HandEffort Easiest(in HandTask task, in HandStrength strength)
    {
        if (task.Strapped)
        {
            return new(Grasp.None, 0, 0, 0);
        }

        var best = new HandEffort(Grasp.None, task.Newtons, 0, double.PositiveInfinity);
        for (var grasp = Grasp.FinePinch; grasp < Grasp.None; grasp++)
        {
            double capacity = strength.Of(grasp) * (grasp == Grasp.WholeHand && task.Takes(grasp) ? task.WholeHandShare : 1);
            if (capacity > 0 && (task.Takes(grasp) || task.AgainstTheBody))
            {
                // Pressing against the body, the handle is not gripped: a thicker one helps only where the whole hand is listed.
                double newtons = task.Takes(grasp) ? task.Demand(grasp) : task.Newtons;
                double ratio = newtons / (capacity * task.AcceptableShare);
                best = ratio < best.Ratio ? new(grasp, newtons, capacity, ratio) : best;
            }
        }

        return best;
    }
}
