namespace ToiletAid.App.Files;

/// <summary>The knowledge file about bodies, joints and postures, as it lies in the file.</summary>
internal sealed record BodyFile
{
    public required int Format { get; init; }

    public required BodyFileRegression[] Regressions { get; init; }

    public required BodyFileNumber[] Numbers { get; init; }
}
