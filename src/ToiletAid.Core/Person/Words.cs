using System.Text;

namespace ToiletAid.Core.Person;

/// <summary>Enum members as the kebab-case words of files and options: <c>NotPastTheHip</c> is <c>not-past-the-hip</c>.</summary>
public static class Words
{
    /// <summary>The word of an enum member.</summary>
    /// <exception cref="KeyNotFoundException"><paramref name="value"/> is not a member.</exception>
    public static string Of<T>(T value)
        where T : struct, Enum =>
        Table<T>.ByValue[value];

    /// <summary>The enum member of a word, or null when there is none.</summary>
    public static T? Find<T>(string? word)
        where T : struct, Enum =>
        word is not null && Table<T>.ByWord.TryGetValue(word, out T value) ? value : null;

    /// <summary>Every word of an enum, in the order of its members.</summary>
    public static IEnumerable<string> All<T>()
        where T : struct, Enum =>
        Enum.GetValues<T>().Select(Of);

    private static string Kebab(string name)
    {
        var word = new StringBuilder();
        foreach (char c in name)
        {
            if (char.IsUpper(c) && word.Length > 0)
            {
                word.Append('-');
            }

            word.Append(char.ToLowerInvariant(c));
        }

        return word.ToString();
    }

    private static class Table<T>
        where T : struct, Enum
    {
        internal static readonly Dictionary<T, string> ByValue = Enum.GetValues<T>().ToDictionary(v => v, v => Kebab(v.ToString()));
        internal static readonly Dictionary<string, T> ByWord = ByValue.ToDictionary(p => p.Value, p => p.Key, StringComparer.Ordinal);
    }
}
