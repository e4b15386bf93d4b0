using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Stock;

/// <summary>A clinic's own aids and prices.</summary>
public sealed class ClinicStock
{
    private readonly PricesFile _prices;

    internal ClinicStock(CatalogueFile file)
    {
        Catalogue = new(file.Aids, file.AddOns);
        _prices = file.Prices ?? new();
    }

    /// <summary>The aids and add-ons.</summary>
    public AidCatalogue Catalogue { get; }

    /// <summary>True when the file sets the price of something that is used up.</summary>
    public bool SetsPrices => _prices != new PricesFile();

    /// <summary>The knowledge with this over it: the same id replaces a kind, a new one is added, a price that is given replaces its placeholder.</summary>
    public KnowledgeBase Over(KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        var prices = knowledge.Prices;
        return knowledge with
        {
            Catalogue = knowledge.Catalogue.Under(Catalogue),
            Prices = new(_prices.Roll ?? prices.Roll, _prices.Wipe ?? prices.Wipe, _prices.WaterCubicMetre ?? prices.WaterCubicMetre),
        };
    }
}
