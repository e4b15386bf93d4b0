namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>Tests that draw run one after the other: the library of the screen has only one.</summary>
[CollectionDefinition(nameof(OneScreen))]
public sealed class OneScreen;
