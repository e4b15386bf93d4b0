using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Catalogue;

/// <summary>The paper that an aid takes.</summary>
/// <param name="Hold">How it is held.</param>
/// <param name="Sheets">Sheets for one load with a formed stool; 1 or more.</param>
/// <param name="Folds">How often that strip is folded in half; 0 or more.</param>
/// <param name="HeadGirth">Length of paper for once around the head, m; null for a pad.</param>
public sealed record PaperUse(PaperHold Hold, int Sheets, int Folds, Sourced? HeadGirth = null);
