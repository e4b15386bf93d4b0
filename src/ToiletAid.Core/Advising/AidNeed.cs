namespace ToiletAid.Core.Advising;

/// <summary>Whether the person needs an aid at all.</summary>
public enum AidNeed
{
    /// <summary>No: the own hand does it, and that is sure enough.</summary>
    No,

    /// <summary>Perhaps not: the own hand comes first, but whether it is enough has to be tried.</summary>
    TryHandFirst,

    /// <summary>Not needed, but better: the own hand can do it, and something else suits more.</summary>
    Better,

    /// <summary>Yes: the own hand cannot do it.</summary>
    Yes,

    /// <summary>Nothing can be offered, so that something has to be arranged.</summary>
    NothingOffered,
}
