using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Safety;

/// <summary>A number or a word of the case for a slot in a sentence.</summary>
/// <param name="Name">Name of the slot.</param>
/// <param name="Si">The number, SI.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Word">A word instead of the number, kebab-case for an operation or an approach; null for the number.</param>
public sealed record Slot(string Name, double Si, Dimension Dimension, string? Word = null);
