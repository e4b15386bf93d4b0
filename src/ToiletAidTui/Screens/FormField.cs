namespace ToiletAidTui.Screens;

/// <summary>One thing that a form asks for.</summary>
/// <param name="Option">Name of the option, with its dashes.</param>
/// <param name="Description">What it takes, in the words of the help.</param>
internal sealed record FormField(string Option, string Description)
{
    /// <summary>The name in words, such as "Shoulder flexion".</summary>
    internal string Label { get; } = char.ToUpperInvariant(Option.TrimStart('-')[0]) + Option.TrimStart('-')[1..].Replace('-', ' ');
}
