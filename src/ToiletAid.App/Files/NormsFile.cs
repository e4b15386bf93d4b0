namespace ToiletAid.App.Files;

/// <summary>Norms of the hand, as in the file.</summary>
internal sealed record NormsFile(PercentileNormFile Grip, MeanNormFile PalmarPinch, MeanNormFile NineHolePeg);
