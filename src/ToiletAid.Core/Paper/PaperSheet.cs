namespace ToiletAid.Core.Paper;

/// <summary>One sheet of paper between two perforations.</summary>
/// <param name="LengthMetres">Length along the roll, m; above 0.</param>
/// <param name="WidthMetres">Width of the roll, m; above 0.</param>
/// <param name="Plies">Plies; 1 or more.</param>
public sealed record PaperSheet(double LengthMetres, double WidthMetres, int Plies);
