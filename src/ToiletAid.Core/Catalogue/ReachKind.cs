namespace ToiletAid.Core.Catalogue;

/// <summary>What brings the method to the skin.</summary>
public enum ReachKind
{
    /// <summary>Nothing of the person's: a seat or another person does.</summary>
    None,

    /// <summary>The bare hand.</summary>
    BareHand,

    /// <summary>A handle that lengthens the hand.</summary>
    Handle,

    /// <summary>A jet of water, which covers a last distance by itself.</summary>
    Jet,
}
