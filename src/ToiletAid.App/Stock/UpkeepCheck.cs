using System.Text.Json;
using ToiletAid.App.Files;

namespace ToiletAid.App.Stock;

/// <summary>Checks the costs of an aid or add-on.</summary>
internal static class UpkeepCheck
{
    /// <summary>Checks them.</summary>
    public static void Check(JsonWalker parent)
    {
        if (parent.Required("upkeep") is not { } upkeep)
        {
            return;
        }

        if (upkeep.Element.ValueKind != JsonValueKind.Object)
        {
            upkeep.Fault("wrong-kind", $"{upkeep.Quote()} should be an object with price, lifeYears and monthlyConsumables");
            return;
        }

        upkeep.OnlyMembers("price", "lifeYears", "monthlyConsumables");
        MemberCheck.Sourced(upkeep, "price", required: true);
        MemberCheck.Sourced(upkeep, "lifeYears", required: true);
        MemberCheck.Sourced(upkeep, "monthlyConsumables", required: true);
    }
}
