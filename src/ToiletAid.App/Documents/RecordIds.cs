using System.Security.Cryptography;
using System.Text;
using ToiletAid.App.Files;

namespace ToiletAid.App.Documents;

/// <summary>Ids of the resources of one record: the same visit gives the same ids, so that a record sent twice is one record.</summary>
/// <param name="person">Code of the person.</param>
/// <param name="date">Day of the visit.</param>
internal sealed class RecordIds(string person, DateOnly date)
{
    /// <summary>Id of a resource.</summary>
    /// <param name="part">What tells it from the others of the record.</param>
    internal string Of(string part) => Named($"{person}/{IsoDay.Of(date)}/{part}");

    /// <summary>A UUID of version 8 (RFC 9562) out of a name.</summary>
    internal static string Named(string name)
    {
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes("toiletaid/" + name))[..16];
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash, bigEndian: true).ToString();
    }
}
