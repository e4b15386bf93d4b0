namespace ToiletAid.App.Typed;

/// <summary>A number and the word behind it.</summary>
/// <param name="Number">The number.</param>
/// <param name="Word">What follows it, lower case, trimmed; empty when nothing does.</param>
internal readonly record struct TypedPart(double Number, string Word);
