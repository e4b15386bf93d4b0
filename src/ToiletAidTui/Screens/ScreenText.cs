using System.Collections.Immutable;

namespace ToiletAidTui.Screens;

/// <summary>What a screen says at one moment. It stays as it is while the screens go on changing.</summary>
/// <param name="Lines">The text.</param>
/// <param name="AnswerForms">The answer line in words, the fullest first.</param>
/// <param name="Error">Why the last answer was not taken; empty when it was.</param>
/// <param name="Caret">Character of the answer line on which the cursor stands, from 0.</param>
internal sealed record ScreenText(ImmutableArray<string> Lines, ImmutableArray<string> AnswerForms, string Error, int Caret)
{
    /// <summary>What is said now.</summary>
    internal static ScreenText Of(Shell shell) => shell.IsHidden
        ? new([.. shell.Lines], [shell.HiddenAnswer], string.Empty, 0)
        : new([.. shell.Lines], [.. shell.Current.AnswerForms], shell.Error, shell.Current.Caret);

    /// <summary>Nothing of the visit, while the screens are at work.</summary>
    /// <param name="notice">The answer line.</param>
    internal static ScreenText Hidden(string notice) => new([Curtain.Hidden], [notice], string.Empty, 0);

    /// <summary>The same with another answer line, and nothing to type in it.</summary>
    internal ScreenText With(string notice) => this with { AnswerForms = [notice], Caret = 0 };

    /// <summary>The fullest answer line that stays in one row: of a second row a reader may say nothing.</summary>
    /// <param name="longest">Most characters in a row.</param>
    internal string Answer(int longest) => AnswerForms.FirstOrDefault(f => f.Length <= longest) ?? AnswerForms[^1];
}
