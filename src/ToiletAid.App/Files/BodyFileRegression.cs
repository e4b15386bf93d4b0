using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Files;

/// <summary>One regression of <see cref="BodyFile"/>; m and kg.</summary>
internal sealed record BodyFileRegression
{
    public required BodyMeasure Measure { get; init; }

    public required Sex Sex { get; init; }

    public required double Intercept { get; init; }

    public required double PerStature { get; init; }

    public required double PerMass { get; init; }

    public required double Spread { get; init; }

    public required Basis Basis { get; init; }

    public required string Source { get; init; }
}
