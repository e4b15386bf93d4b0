namespace ToiletAid.Core.Person;

/// <summary>What may stand in a line of the free note of a visit.</summary>
public static class NoteLine
{
    /// <summary>Longest line, characters. A decision of this project: what is longer belongs on two lines, since each is read aloud in one go.</summary>
    public const int Longest = 300;

    /// <summary>Most lines of one visit. A decision of this project.</summary>
    public const int Most = 20;

    /// <summary>What is wrong with a line, as the end of a sentence that begins with it; null when nothing is.</summary>
    /// <param name="line">The line, without its end.</param>
    public static string? Fault(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (string.IsNullOrWhiteSpace(line))
        {
            return "is empty, write something or leave it out";
        }

        if (ReadableText.Fault(line) is { } fault)
        {
            return fault;
        }

        int length = line.EnumerateRunes().Count();
        return length > Longest ? $"has {length} characters, at most {Longest} are taken, write it in two lines" : null;
    }
}
