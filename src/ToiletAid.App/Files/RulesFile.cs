using System.Collections.Immutable;
using ToiletAid.Core.Safety;

namespace ToiletAid.App.Files;

/// <summary>Rules, as in the file.</summary>
internal sealed record RulesFile(ImmutableArray<Rule> Rules);
