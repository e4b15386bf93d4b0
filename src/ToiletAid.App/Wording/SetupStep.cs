using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Wording;

/// <summary>One step of the set-up.</summary>
/// <param name="Act">What is done in it.</param>
/// <param name="Text">The words.</param>
/// <param name="Few">The same in a few words, to stand under a large picture.</param>
/// <param name="With">The kind of aid it is done with, where that matters.</param>
public sealed record SetupStep(SetupAct Act, string Text, string Few, Aid? With = null);
