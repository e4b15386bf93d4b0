using System.Collections.Immutable;

namespace ToiletAid.App.Documents;

/// <summary>A code of the International Classification of Functioning, Disability and Health.</summary>
/// <param name="Code">The code.</param>
/// <param name="Title">Its title.</param>
/// <param name="Questions">Questions whose answers fall under it.</param>
public sealed record FunctionCode(string Code, string Title, ImmutableArray<string> Questions);
