namespace ToiletAid.Terminal.Tests;

/// <summary>Tests that listen run one at a time: on a busy machine a reader falls behind.</summary>
[CollectionDefinition(nameof(Aloud), DisableParallelization = true)]
public sealed class Aloud;
