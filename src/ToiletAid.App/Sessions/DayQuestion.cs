namespace ToiletAid.App.Sessions;

/// <summary>A doubt about the day of a visit.</summary>
/// <param name="Kind">What speaks against it.</param>
/// <param name="Sentence">The same in words.</param>
/// <param name="Mend">What to do where nobody can be asked.</param>
public sealed record DayQuestion(DayDoubt Kind, string Sentence, string Mend);
