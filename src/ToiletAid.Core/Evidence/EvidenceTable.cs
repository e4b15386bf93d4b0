namespace ToiletAid.Core.Evidence;

/// <summary>Numbers with their origin, by id: every limit, coefficient and threshold of rules and criteria.</summary>
public sealed class EvidenceTable
{
    private readonly NumberTable _numbers;

    /// <summary>Makes a table.</summary>
    /// <param name="items">Entries by id.</param>
    public EvidenceTable(IEnumerable<KeyValuePair<string, Sourced>> items) => _numbers = new(items);

    /// <summary>Every id of the table.</summary>
    public IEnumerable<EvidenceId> Ids => _numbers.Ids.Select(id => new EvidenceId(id));

    /// <summary>An entry.</summary>
    /// <exception cref="KeyNotFoundException">No such entry.</exception>
    public Sourced this[EvidenceId id] => _numbers[id.Text];

    /// <summary>The most plausible value of an entry, SI.</summary>
    /// <exception cref="KeyNotFoundException">No such entry.</exception>
    public double Value(EvidenceId id) => this[id].Value;

    /// <summary>The id of an entry that data name, or null when there is none.</summary>
    /// <param name="text">The id as the data have it.</param>
    public EvidenceId? Find(string text) => _numbers.Has(text) ? new EvidenceId(text) : null;
}
