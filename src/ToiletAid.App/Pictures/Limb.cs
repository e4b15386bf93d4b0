namespace ToiletAid.App.Pictures;

/// <summary>A part of a body between two joints, round at both ends.</summary>
/// <param name="Name">Which one.</param>
/// <param name="From">Where it begins.</param>
/// <param name="FromRadius">Half its thickness there, cm.</param>
/// <param name="To">Where it ends.</param>
/// <param name="ToRadius">Half its thickness there, cm.</param>
internal sealed record Limb(string Name, Spot From, double FromRadius, Spot To, double ToRadius);
