using System.Collections.Immutable;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Stock;

/// <summary>Checks one aid of a catalogue: every member, and what must fit together.</summary>
internal static class AidCheck
{
    /// <summary>Materials for which there is an allergy to answer.</summary>
    public static readonly ImmutableArray<string> Materials = ["silicone", "latex", "nickel"];

    private static readonly string[] Members =
    [
        "id", "name", "summary", "method", "reach", "length", "jetReach", "shape", "tip", "tipWidth", "mass", "foldedLength", "operations", "paper",
        "water", "coverage", "rubbing", "soilTouched", "easyToClean", "noticeable", "noise", "steps", "needsSight", "materials", "approaches", "postures",
        "addOns", "companions", "changesFixtures", "needsBin", "upkeep", "variants", "articleOf",
    ];

    /// <summary>Checks an aid.</summary>
    public static void Check(JsonWalker aid, StockNames names)
    {
        if (aid.Element.ValueKind != JsonValueKind.Object)
        {
            aid.Fault("wrong-kind", $"{aid.Quote()} should be an aid in braces");
            return;
        }

        aid.OnlyMembers(Members);
        MemberCheck.Id(aid);
        ArticleOf(aid, names);
        MemberCheck.Text(aid, "name");
        MemberCheck.Text(aid, "summary");
        var method = MemberCheck.Word<MethodKind>(aid, "method", required: true);
        var reach = MemberCheck.Word<ReachKind>(aid, "reach", required: true);
        MemberCheck.Word<AidShape>(aid, "shape", required: false);
        MemberCheck.Word<Tip>(aid, "tip", required: true);
        Lengths(aid, reach);
        MemberCheck.Sourced(aid, "mass", required: true);
        foreach (string share in (string[])["coverage", "rubbing", "soilTouched", "easyToClean", "noticeable", "noise", "needsSight"])
        {
            MemberCheck.Sourced(aid, share, required: true);
        }

        MemberCheck.Whole(aid, "steps", required: true);
        MemberCheck.Among(aid, "materials", Materials, "a material that an allergy is asked about");
        int approaches = MemberCheck.WordList<Approach>(aid, "approaches");
        if (approaches == 0 && reach is ReachKind.BareHand or ReachKind.Handle or ReachKind.Jet)
        {
            aid.Fault("no-approach", "an aid that is brought to the skin by hand needs an approach, add behind, front or side");
        }

        if (MemberCheck.WordList<Posture>(aid, "postures") == 0)
        {
            aid.Fault("no-posture", "it has no posture, add those it can be used in");
        }

        MemberCheck.Among(aid, "addOns", names.AddOns, "an add-on of this file or built in");
        MemberCheck.Among(aid, "companions", names.Aids, "an aid of this file or built in");
        MemberCheck.Flag(aid, "changesFixtures");
        MemberCheck.Flag(aid, "needsBin");
        Operations(aid);
        Paper(aid);
        Water(aid, method);
        UpkeepCheck.Check(aid);
        VariantCheck.Check(aid, reach);
    }

    /// <summary>An article counts as one with its kind, which is built in.</summary>
    private static void ArticleOf(JsonWalker aid, StockNames names)
    {
        if (aid.Member("articleOf") is not { } of)
        {
            return;
        }

        string? kind = of.Element.ValueKind == JsonValueKind.String ? of.Element.GetString() : null;
        if (kind is null || !names.Kinds.Contains(kind))
        {
            of.Fault("unknown-kind", $"{of.Quote()} is not a built-in kind, use one of {string.Join(", ", names.Kinds)}");
        }
        else if (aid.Member("id") is { Element.ValueKind: JsonValueKind.String } id && id.Element.GetString() is { } own && names.Kinds.Contains(own))
        {
            of.Fault("kind-is-no-article", $"{own} is a kind itself and no article of one, leave articleOf out or give another id");
        }
    }

    private static void Lengths(JsonWalker aid, ReachKind? reach)
    {
        bool held = reach is ReachKind.Handle or ReachKind.Jet;
        double? length = MemberCheck.Sourced(aid, "length", required: held);
        if (held && length is 0)
        {
            aid.Member("length")!.Value.Fault("out-of-range", "a handle has a length above 0, measure it");
        }

        MemberCheck.Sourced(aid, "jetReach", required: false);
        MemberCheck.Sourced(aid, "tipWidth", required: false);
        MemberCheck.Sourced(aid, "foldedLength", required: false);
    }

    private static void Operations(JsonWalker aid)
    {
        foreach (var operation in aid.Required("operations")?.Items() ?? [])
        {
            Operation(operation);
        }
    }

    /// <summary>Checks one thing that a hand must do.</summary>
    internal static void Operation(JsonWalker operation)
    {
        if (operation.Element.ValueKind != JsonValueKind.Object)
        {
            operation.Fault("wrong-kind", $"{operation.Quote()} should be an operation in braces");
            return;
        }

        operation.OnlyMembers("kind", "act", "force", "grasps", "againstTheBody", "hands", "duration", "repetitions", "fine");
        MemberCheck.Word<OperationKind>(operation, "kind", required: true);
        MemberCheck.Word<HandAct>(operation, "act", required: false);
        MemberCheck.Word<FineHandling>(operation, "fine", required: false);
        MemberCheck.Sourced(operation, "force", required: true);
        if (MemberCheck.Sourced(operation, "duration", required: true) is 0)
        {
            operation.Member("duration")!.Value.Fault("out-of-range", "a duration is above 0, time it");
        }

        if (MemberCheck.WordList<Grasp>(operation, "grasps") == 0)
        {
            operation.Fault("no-grasp", "no grasp can do it, add those that can");
        }

        MemberCheck.Flag(operation, "againstTheBody");
        MemberCheck.Whole(operation, "hands", required: false);
        MemberCheck.Whole(operation, "repetitions", required: false);
    }

    private static void Paper(JsonWalker aid)
    {
        if (aid.Member("paper") is not { Element.ValueKind: not JsonValueKind.Null } paper)
        {
            return;
        }

        if (paper.Element.ValueKind != JsonValueKind.Object)
        {
            paper.Fault("wrong-kind", $"{paper.Quote()} should be an object with hold, sheets and folds");
            return;
        }

        paper.OnlyMembers("hold", "sheets", "folds", "headGirth");
        var hold = MemberCheck.Word<PaperHold>(paper, "hold", required: true);
        MemberCheck.Whole(paper, "sheets", required: true);
        MemberCheck.Whole(paper, "folds", required: true);
        bool wraps = hold is PaperHold.Wrap or PaperHold.Tuck;
        if (MemberCheck.Sourced(paper, "headGirth", required: wraps) is 0)
        {
            paper.Member("headGirth")!.Value.Fault("out-of-range", "a head has a girth above 0, measure it");
        }
    }

    private static void Water(JsonWalker aid, MethodKind? method)
    {
        if (aid.Member("water") is not { Element.ValueKind: not JsonValueKind.Null } water)
        {
            if (method is MethodKind.Wash or MethodKind.WashAndDry)
            {
                aid.Fault("missing-member", "an aid that washes needs water, add it");
            }

            return;
        }

        if (water.Element.ValueKind != JsonValueKind.Object)
        {
            water.Fault("wrong-kind", $"{water.Quote()} should be an object with gentleFlow, strongFlow and perClean");
            return;
        }

        water.OnlyMembers("reservoir", "gentleFlow", "strongFlow", "perClean", "canBeWarm", "limitsTemperature", "plumbed", "needsSocket");
        MemberCheck.Sourced(water, "reservoir", required: false);
        double? gentle = MemberCheck.Sourced(water, "gentleFlow", required: true);
        double? strong = MemberCheck.Sourced(water, "strongFlow", required: true);
        if (gentle > strong)
        {
            water.Fault("not-in-order", "the gentle flow is more than the strong one, change them round");
        }

        MemberCheck.Sourced(water, "perClean", required: true);
        foreach (string flag in (string[])["canBeWarm", "limitsTemperature", "plumbed", "needsSocket"])
        {
            MemberCheck.Flag(water, flag);
        }
    }
}
