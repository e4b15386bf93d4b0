namespace ToiletAid.Core.Knowledge;

/// <summary>What the words of a rule ask of the person's own hands besides the plan.</summary>
public enum AskedOfHands
{
    /// <summary>Bring paper to the skin: pat, lay it on, lift a fold and dry it.</summary>
    Pat,

    /// <summary>Hold on to something fixed.</summary>
    Hold,
}
