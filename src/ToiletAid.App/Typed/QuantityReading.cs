namespace ToiletAid.App.Typed;

/// <summary>What became of a typed number: it was understood, or it was refused with a sentence that can be read aloud.</summary>
public sealed record QuantityReading
{
    private QuantityReading(TypedQuantity? quantity, string? refusal)
    {
        Quantity = quantity;
        Refusal = refusal;
    }

    /// <summary>What was understood; null when it was refused.</summary>
    public TypedQuantity? Quantity { get; }

    /// <summary>Why it was refused and what may have been meant; null when it was understood.</summary>
    public string? Refusal { get; }

    internal static QuantityReading Understood(TypedQuantity quantity) => new(quantity, null);

    internal static QuantityReading Refused(string sentence) => new(null, sentence);
}
