using System.Text.Json;
using ToiletAid.App.Files;

namespace ToiletAid.App.Stock;

/// <summary>Checks one add-on of a catalogue.</summary>
internal static class AddOnCheck
{
    /// <summary>Checks it.</summary>
    public static void Check(JsonWalker addOn)
    {
        if (addOn.Element.ValueKind != JsonValueKind.Object)
        {
            addOn.Fault("wrong-kind", $"{addOn.Quote()} should be an add-on in braces");
            return;
        }

        addOn.OnlyMembers(
            "id", "name", "summary", "holdsTheHand", "gripShare", "thickness", "preparesPaper", "roomGained", "steadies", "showsTheSkin", "changesFixtures", "extraSteps", "materials", "upkeep");
        MemberCheck.Id(addOn);
        MemberCheck.Text(addOn, "name");
        MemberCheck.Text(addOn, "summary");
        MemberCheck.Sourced(addOn, "gripShare", required: false);
        MemberCheck.Sourced(addOn, "thickness", required: false);
        MemberCheck.Sourced(addOn, "roomGained", required: false);
        foreach (string flag in (string[])["holdsTheHand", "preparesPaper", "steadies", "showsTheSkin", "changesFixtures"])
        {
            MemberCheck.Flag(addOn, flag);
        }

        MemberCheck.Whole(addOn, "extraSteps", required: false);
        MemberCheck.Among(addOn, "materials", AidCheck.Materials, "a material that an allergy is asked about");
        UpkeepCheck.Check(addOn);
    }
}
