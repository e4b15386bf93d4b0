namespace ToiletAid.App.Files;

/// <summary>A fault in somebody's input that they can mend.</summary>
/// <param name="Code">Stable code, such as profile-unknown-option.</param>
/// <param name="Place">Where it is: a JSON path, or line and column; empty for the whole.</param>
/// <param name="Message">What is wrong and what to do, without the place.</param>
public sealed record Issue(string Code, string Place, string Message)
{
    /// <summary>One sentence that can be read aloud.</summary>
    public string Sentence(string source) =>
        Place.Length == 0 ? $"{source}: {Message}" : $"{source}, at {Place}: {Message}";
}
