using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Catalogue;

/// <summary>What an aid costs to buy and to keep, in the clinic's currency.</summary>
/// <param name="Price">Price; a placeholder until the clinic sets it.</param>
/// <param name="LifeYears">Expected life, years; above 0.</param>
/// <param name="MonthlyConsumables">Batteries and the like in a month, without paper and wipes.</param>
public sealed record Upkeep(Sourced Price, Sourced LifeYears, Sourced MonthlyConsumables);
