using ToiletAid.Core.Cost;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Water;

namespace ToiletAid.App.Files;

/// <summary>The built-in numbers of paper, water and cost.</summary>
/// <param name="Numbers">Every number of the file by id.</param>
/// <param name="Paper">Numbers of paper.</param>
/// <param name="Water">Numbers of water.</param>
/// <param name="Prices">Placeholder prices.</param>
public sealed record BuiltInSupplies(NumberTable Numbers, PaperCoefficients Paper, WaterCoefficients Water, Prices Prices)
{
    /// <summary>Reads them.</summary>
    /// <exception cref="System.Text.Json.JsonException">The file is not as it should be.</exception>
    /// <exception cref="KeyNotFoundException">A number is missing.</exception>
    public static BuiltInSupplies Load() => Of(BuiltIn.Load("supplies.json", KnowledgeJson.Default.SuppliesFile));

    internal static BuiltInSupplies Of(SuppliesFile file)
    {
        var numbers = new NumberTable(file.Numbers);
        var burns = new BurnTable(file.Burns.Rows, file.Burns.Basis, file.Burns.Source);
        return new(numbers, new(numbers, file.Stool.Rows), new(numbers, burns), Prices.From(numbers));
    }
}
