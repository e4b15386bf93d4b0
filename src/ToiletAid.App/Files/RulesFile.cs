using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Files;

/// <summary>Rules, as in the file.</summary>
internal sealed record RulesFile(ImmutableArray<Rule> Rules);
