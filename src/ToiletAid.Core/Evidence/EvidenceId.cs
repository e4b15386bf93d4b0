namespace ToiletAid.Core.Evidence;

/// <summary>Id of an entry of the evidence. Those that code names stand in <c>EvidenceIds</c>, those that data name are found by <see cref="EvidenceTable.Find"/>.</summary>
/// <param name="Text">The id as the data have it.</param>
public readonly record struct EvidenceId(string Text)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
