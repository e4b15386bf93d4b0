using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>How often a first place holds, by how much was asked.</summary>
/// <param name="Quick">After a quick visit.</param>
/// <param name="Full">After a full one; measured visits are taken as full ones.</param>
public sealed record CertaintyByDepth(Calibration Quick, Calibration Full)
{
    /// <summary>After a visit of a depth.</summary>
    /// <param name="depth">What was asked.</param>
    public Calibration After(Depth depth) => depth == Depth.Quick ? Quick : Full;
}
