namespace ToiletAid.Core.Person;

/// <summary>What a person's code may look like, so that names, birth dates and phone numbers stay off shared PCs.</summary>
public static class PersonCode
{
    // Decisions of this project: room for a clinic's own numbering, none for a name, a date of birth (six digits or more) or a phone number.
    private const int LongestRunOfLetters = 2;
    private const int MostDigits = 5;
    private const int MostCharacters = 16;

    /// <summary>Why <paramref name="code"/> is not taken, as the end of a sentence; null when it is taken.</summary>
    public static string? Fault(string code)
    {
        if (code.Length is 0 or > MostCharacters || code.Any(c => !char.IsAsciiLetterOrDigit(c) && c != '-'))
        {
            return "is not valid, use up to 16 letters, digits and hyphens such as K-014";
        }

        int digits = code.Count(char.IsAsciiDigit);
        if (LongestRun(code) > LongestRunOfLetters || digits == 0)
        {
            return "looks like a name, and names are not kept on shared PCs, use a code with at most two letters in a row and a digit such as K-014";
        }

        if (digits > MostDigits)
        {
            return "looks like a birth date or a phone number, and these are not kept on shared PCs, use a code with at most five digits such as K-014";
        }

        return IsNumberOrFormula(code) ? "would be taken for a number or a formula in a table, begin it with a letter such as K-014" : null;
    }

    /// <summary>Digits and hyphens are a number or a date to a spreadsheet, 1E5 is a number too, and a hyphen in front begins a formula (common practice).</summary>
    private static bool IsNumberOrFormula(string code)
    {
        string[] parts = code.Split('E', 'e', 'D', 'd');
        return code[0] == '-' || !code.Any(char.IsAsciiLetter)
            || (parts is [{ Length: > 0 }, { Length: > 0 }] && parts.All(p => p.All(c => char.IsAsciiDigit(c) || c == '-')));
    }

    private static int LongestRun(string code)
    {
        int longest = 0, run = 0;
        foreach (char c in code)
        {
            run = char.IsAsciiLetter(c) ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }
}
