namespace ToiletAid.Core.Paper;

/// <summary>The paper that one Bristol stool type asks for.</summary>
/// <param name="Type">Bristol stool type, 1 to 7.</param>
/// <param name="Layers">Sheets between stool and hand or head.</param>
/// <param name="Loads">Loads of paper for one clean.</param>
public sealed record StoolPaper(int Type, int Layers, int Loads);
