namespace ToiletAidTui.Screens;

/// <summary>One thing that a form asks for.</summary>
/// <param name="Option">Name of the option, with its dashes.</param>
/// <param name="Label">What it is called on the screen, such as "Grip strength".</param>
/// <param name="Description">What it takes, in the words of the help.</param>
/// <param name="LeftOut">What holds while nothing is given.</param>
internal sealed record FormField(string Option, string Label, string Description, string LeftOut = "not given");
