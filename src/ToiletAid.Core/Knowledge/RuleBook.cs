using System.Collections.Frozen;
using System.Collections.Immutable;

namespace ToiletAid.Core.Knowledge;

/// <summary>The rows of the hazard table, by id.</summary>
public sealed class RuleBook
{
    private readonly FrozenDictionary<string, Rule> _byId;

    /// <summary>Makes a book.</summary>
    /// <param name="rules">Rules; ids differ.</param>
    public RuleBook(ImmutableArray<Rule> rules)
    {
        All = rules;
        _byId = rules.ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>Every rule, in the order of the file.</summary>
    public ImmutableArray<Rule> All { get; }

    /// <summary>The rule called <paramref name="id"/>.</summary>
    /// <exception cref="KeyNotFoundException">No such rule.</exception>
    public Rule this[string id] => _byId[id];
}
