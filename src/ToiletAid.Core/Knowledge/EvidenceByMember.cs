using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>Entries of the evidence of which there is one for each member of an enum.</summary>
/// <typeparam name="T">The enum; its words end the ids.</typeparam>
public sealed class EvidenceByMember<T>
    where T : struct, Enum
{
    private readonly Dictionary<T, EvidenceId> _ids;

    internal EvidenceByMember(string front) => _ids = Enum.GetValues<T>().ToDictionary(m => m, m => new EvidenceId(front + Words.Of(m)));

    /// <summary>The entry of a member.</summary>
    public EvidenceId this[T member] => _ids[member];

    /// <summary>All of them.</summary>
    internal IEnumerable<EvidenceId> All => _ids.Values;
}
