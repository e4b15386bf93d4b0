using System.Collections.Immutable;

namespace ToiletAid.App.Documents;

/// <summary>A class of ISO 9999.</summary>
/// <param name="Code">The code.</param>
/// <param name="Title">What it holds, in our own words.</param>
/// <param name="Aids">Kinds of aid that fall under it.</param>
public sealed record AidClass(string Code, string Title, ImmutableArray<string> Aids);
