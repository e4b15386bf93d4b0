using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Files;

/// <summary>One number of <see cref="BodyFile"/> in its own unit; without low and high it is taken as it stands.</summary>
internal sealed record BodyFileNumber
{
    public required string Id { get; init; }

    public required double Value { get; init; }

    public required string Unit { get; init; }

    public double? Low { get; init; }

    public double? High { get; init; }

    public required Basis Basis { get; init; }

    public required string Source { get; init; }
}
