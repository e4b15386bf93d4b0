namespace ToiletAid.Core.Person;

/// <summary>How far the person can lean on the seat without losing balance.</summary>
public enum Lean
{
    /// <summary>Forward.</summary>
    Forward,

    /// <summary>To a side.</summary>
    ToASide,

    /// <summary>Forward and to a side.</summary>
    Both,

    /// <summary>Not at all.</summary>
    NotAtAll,
}
