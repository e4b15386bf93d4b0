namespace ToiletAid.App.Files;

/// <summary>One range of <see cref="RangesFile"/>.</summary>
/// <param name="Unit">Symbol of its unit.</param>
/// <param name="Low">Lowest value that makes sense, included.</param>
/// <param name="High">Highest value that makes sense, included.</param>
internal sealed record RangesFileMember(string Unit, double Low, double High);
