using System.Runtime.InteropServices;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Hand;

/// <summary>One operation made ready for one person: add-ons applied, everything that does not depend on strength worked out.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct HandTask
{
    /// <summary>Which operation.</summary>
    public required OperationKind Kind { get; init; }

    /// <summary>Force asked for in a pinch or a press, N.</summary>
    public required double Newtons { get; init; }

    /// <summary>Force asked for with the whole hand, N; less with a built-up handle.</summary>
    public required double WholeHandNewtons { get; init; }

    /// <summary>Share of the greatest force that may be asked for.</summary>
    public required double AcceptableShare { get; init; }

    /// <summary>Grasps that can do it, as bits by <see cref="Grasp"/>.</summary>
    public required int Grasps { get; init; }

    /// <summary>Share of the whole hand's force that counts: less where small things are folded and tucked, which is a pinch.</summary>
    public required double WholeHandShare { get; init; }

    /// <summary>True when pressing against the body can do it.</summary>
    public required bool AgainstTheBody { get; init; }

    /// <summary>True when a strap does it and no grasp is needed.</summary>
    public required bool Strapped { get; init; }

    /// <summary>What stands in the way whatever the strength.</summary>
    public required HandlingObstacle Obstacle { get; init; }

    /// <summary>Chance that it fails whatever the strength.</summary>
    public required double Miss { get; init; }

    /// <summary>How long it takes this person in one clean, s.</summary>
    public required double Seconds { get; init; }

    public bool Takes(Grasp grasp) => (Grasps & (1 << (int)grasp)) != 0;

    public double Demand(Grasp grasp) => grasp == Grasp.WholeHand ? WholeHandNewtons : Newtons;
}
