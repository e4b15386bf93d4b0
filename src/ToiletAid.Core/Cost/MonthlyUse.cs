using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Cost;

/// <summary>What is used up in a month.</summary>
/// <param name="Rolls">Rolls of paper.</param>
/// <param name="Wipes">Moist wipes.</param>
/// <param name="WaterCubicMetres">Water, m³.</param>
public sealed record MonthlyUse(double Rolls, double Wipes, double WaterCubicMetres)
{
    /// <summary>What one aid uses up.</summary>
    /// <param name="aid">The aid.</param>
    /// <param name="paper">Its paper; null when it takes none.</param>
    /// <param name="cleansPerDay">Cleans a day; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cleansPerDay"/> is not 0 or more.</exception>
    /// <remarks>What wipes without paper wipes with moist wipes, a new one for each pass.</remarks>
    public static MonthlyUse Of(Aid aid, PaperNeed? paper, double cleansPerDay)
    {
        if (!(cleansPerDay >= 0 && double.IsFinite(cleansPerDay)))
        {
            throw new ArgumentOutOfRangeException(nameof(cleansPerDay), cleansPerDay, "not 0 or more");
        }

        double cleans = cleansPerDay * Calendar.DaysInMonth;
        bool takesWipes = aid.Method == MethodKind.Wipe && aid.Paper is null;
        int passes = takesWipes ? aid.Operations.Where(o => o.Kind == OperationKind.Clean).Sum(o => o.Repetitions) : 0;
        return new(paper?.RollsPerMonth ?? 0, passes * cleans, (aid.Water?.PerClean.Value ?? 0) * cleans);
    }
}
