namespace ToiletAidTui.Commands.Help;

/// <summary>A command line that works as it stands.</summary>
/// <param name="Purpose">What it is for, as the end of a sentence that begins with To.</param>
/// <param name="Line">What is typed after the name of the program.</param>
internal sealed record Example(string Purpose, string Line);
