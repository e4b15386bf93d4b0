namespace ToiletAidTui.Host;

/// <summary>What a new passphrase must be. Length alone counts: rules about kinds of character make people choose worse ones (decision).</summary>
internal static class PassphraseRule
{
    private const int Fewest = 12;
    private const int Most = 1000;

    /// <summary>Why it is not taken, as the end of a sentence; null when it is taken.</summary>
    internal static string? Fault(string passphrase) =>
        passphrase.Length < Fewest ? $"is shorter than {Fewest} characters, use four words that nobody would guess"
        : passphrase.Length > Most ? $"is longer than {Most} characters, use a shorter one"
        : null;
}
