namespace ToiletAidTui.Commands.Help;

/// <summary>Commands that belong together.</summary>
/// <param name="Heading">What they are for.</param>
/// <param name="Commands">Their names.</param>
internal sealed record Topic(string Heading, params string[] Commands);
