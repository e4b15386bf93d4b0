using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>A straight-line estimate of a body measure from stature and mass, for one sex.</summary>
public sealed record BodyRegression
{
    /// <summary>What is estimated.</summary>
    public required BodyMeasure Measure { get; init; }

    /// <summary>Female or male; never unstated, which is the average of both.</summary>
    public required Sex Sex { get; init; }

    /// <summary>Estimate at stature 0 and mass 0, m (kg for mass).</summary>
    public required double Intercept { get; init; }

    /// <summary>Increase for each metre of stature.</summary>
    public double PerStature { get; init; }

    /// <summary>Increase for each kilogram of mass.</summary>
    public double PerMass { get; init; }

    /// <summary>Standard deviation of people around the line, same unit as the estimate; 0 or more.</summary>
    public required double Spread { get; init; }

    /// <summary>What kind of knowledge it is.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Citation, with the number of people and who fitted it.</summary>
    public required string Source { get; init; }

    /// <summary>The estimate.</summary>
    /// <param name="stature">Stature, m.</param>
    /// <param name="mass">Body mass, kg.</param>
    /// <returns>m, or kg for mass.</returns>
    public double At(double stature, double mass) => Intercept + (PerStature * stature) + (PerMass * mass);
}
