using System.Collections.Immutable;

namespace ToiletAid.App.Documents;

/// <summary>A code of the International Classification of Functioning, Disability and Health.</summary>
/// <param name="Code">The code.</param>
/// <param name="Title">Its title.</param>
/// <param name="Questions">Questions whose notable answers fall under it; none where it stands for the need itself.</param>
/// <param name="Complete">Options that mean a complete problem, which the classification qualifies with 4; no other answer says how far it goes.</param>
public sealed record FunctionCode(string Code, string Title, ImmutableArray<string> Questions, ImmutableArray<string> Complete);
