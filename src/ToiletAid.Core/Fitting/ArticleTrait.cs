using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Fitting;

/// <summary>One thing about an article: a number that is measured, or something that it has or has not.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Of">Id of the add-on or the material; null for the article itself.</param>
public sealed record ArticleTrait(ArticleTraitKind Kind, string? Of = null)
{
    private static readonly ImmutableArray<string> Materials = ["latex", "silicone", "nickel"];

    /// <summary>True for what is measured, false for what it has or has not.</summary>
    public bool IsNumber => Kind < ArticleTraitKind.Curved;

    /// <summary>True for a limit that only rules ask for: it is read off a label or kept by a thermometer.</summary>
    public bool IsOfARule => Kind is ArticleTraitKind.Carries or ArticleTraitKind.WaterTemperature or ArticleTraitKind.FillTemperature;

    /// <summary>True where more is better for whoever uses it, false where less is; a long one is heavier to hold, so that it may be both.</summary>
    public bool MoreReaches => Kind is ArticleTraitKind.Length or ArticleTraitKind.JetReach;

    /// <summary>True when there is something to buy and to hold a ruler to: no hand, no wipes, no helper.</summary>
    /// <param name="aid">The kind.</param>
    public static bool IsArticle(Aid aid)
    {
        ArgumentNullException.ThrowIfNull(aid);
        return aid.Reach is ReachKind.Handle or ReachKind.Jet || (aid.Reach == ReachKind.None && aid.Method != MethodKind.Helper);
    }

    /// <summary>Everything that articles of a kind may differ in; empty where nothing is bought.</summary>
    /// <param name="aid">The kind.</param>
    /// <param name="addOns">Add-ons that are to go with it.</param>
    public static ImmutableArray<ArticleTrait> All(Aid aid, ImmutableArray<AddOn> addOns)
    {
        if (!IsArticle(aid))
        {
            return [];
        }

        ArticleTrait[] all =
        [
            .. Enum.GetValues<ArticleTraitKind>().Where(k => k is not (ArticleTraitKind.TakesAddOn or ArticleTraitKind.FreeOf)).Select(k => new ArticleTrait(k)),
            .. addOns.Where(a => a.HoldsTheHand || a.GripShare is not null).Select(a => new ArticleTrait(ArticleTraitKind.TakesAddOn, a.Id)),
            .. Materials.Select(m => new ArticleTrait(ArticleTraitKind.FreeOf, m)),
        ];
        return [.. all.Where(t => t.IsNumber ? t.Number(aid) is not null : t.Has(aid) is not null)];
    }

    /// <summary>The number of a kind or article, SI; null where it has none.</summary>
    /// <param name="aid">The kind or article.</param>
    public Sourced? Number(Aid aid)
    {
        ArgumentNullException.ThrowIfNull(aid);
        return Kind switch
        {
            ArticleTraitKind.Length => aid.Length,
            ArticleTraitKind.JetReach => aid.JetReach,
            ArticleTraitKind.TipWidth => aid.TipWidth,
            ArticleTraitKind.FoldedLength => aid.FoldedLength,
            ArticleTraitKind.Mass => aid.Mass.High > 0 ? aid.Mass : null,
            ArticleTraitKind.Reservoir => aid.Water?.Reservoir,
            ArticleTraitKind.LoadForce => aid.Reach == ReachKind.Handle ? Force(aid, OperationKind.Load) : null,
            ArticleTraitKind.ReleaseForce => aid.Reach == ReachKind.Handle ? Force(aid, OperationKind.Release) : null,
            ArticleTraitKind.WashForce => aid.Water is not null ? Force(aid, OperationKind.Clean) : null,
            ArticleTraitKind.Price => aid.Upkeep.Price,
            _ => null,
        };
    }

    /// <summary>Whether a kind or article has it; null where it could not.</summary>
    /// <param name="aid">The kind or article.</param>
    public bool? Has(Aid aid)
    {
        ArgumentNullException.ThrowIfNull(aid);
        bool held = aid.Reach is ReachKind.Handle or ReachKind.Jet, wipes = aid.Reach == ReachKind.Handle;
        return Kind switch
        {
            ArticleTraitKind.Curved => held ? aid.Shape == AidShape.Curved : null,
            ArticleTraitKind.SoftTip => wipes ? aid.Tip == Tip.Soft : null,
            ArticleTraitKind.OneHandLoad => wipes ? Step(aid, OperationKind.Load) is { } load ? load.Hands == 1 : null : null,
            ArticleTraitKind.EasyLoad => wipes ? Step(aid, OperationKind.Load) is { } fine ? fine.Fine != FineHandling.Much : null : null,
            ArticleTraitKind.ReleaseWithoutGrip => wipes && Step(aid, OperationKind.Release) is { } release ? release.AgainstTheBody || Presses(release) : null,
            ArticleTraitKind.WashWithoutGrip => aid.Water is not null && Step(aid, OperationKind.Clean) is { } wash ? Presses(wash) : null,
            ArticleTraitKind.TakesAddOn => aid.AddOns.Contains(Of!),
            ArticleTraitKind.FreeOf => !aid.Materials.Contains(Of!),
            _ => null,
        };
    }

    /// <summary>The article with another number.</summary>
    /// <param name="aid">The kind or article.</param>
    /// <param name="si">The number, SI; 0 or more.</param>
    public Aid With(Aid aid, double si)
    {
        ArgumentNullException.ThrowIfNull(aid);
        var number = new Sourced(si, si, si, Basis.Measured, "Of the article.");
        return Kind switch
        {
            ArticleTraitKind.Length => aid with { Length = number },
            ArticleTraitKind.JetReach => aid with { JetReach = number },
            ArticleTraitKind.TipWidth => aid with { TipWidth = number },
            ArticleTraitKind.FoldedLength => aid with { FoldedLength = number },
            ArticleTraitKind.Mass => aid with { Mass = number },
            ArticleTraitKind.Reservoir => aid with { Water = aid.Water! with { Reservoir = number } },
            ArticleTraitKind.LoadForce => WithStep(aid, OperationKind.Load, o => o with { Force = number }),
            ArticleTraitKind.ReleaseForce => WithStep(aid, OperationKind.Release, o => o with { Force = number }),
            ArticleTraitKind.WashForce => WithStep(aid, OperationKind.Clean, o => o with { Force = number }),
            ArticleTraitKind.Price => aid with { Upkeep = aid.Upkeep with { Price = number } },
            _ => throw new InvalidOperationException($"{Kind} is not a number"),
        };
    }

    /// <summary>The article with it or without.</summary>
    /// <param name="aid">The kind or article.</param>
    /// <param name="has">True with it.</param>
    public Aid With(Aid aid, bool has) => Has(aid) == has ? aid : Kind switch
    {
        ArticleTraitKind.Curved => aid with { Shape = has ? AidShape.Curved : AidShape.Straight },
        ArticleTraitKind.SoftTip => aid with { Tip = has ? Tip.Soft : Tip.Hard },
        ArticleTraitKind.OneHandLoad => WithStep(aid, OperationKind.Load, o => o with { Hands = has ? 1 : 2 }),
        ArticleTraitKind.EasyLoad => WithStep(aid, OperationKind.Load, o => has
            ? o with { Fine = FineHandling.Some, Grasps = [.. o.Grasps.Union([Grasp.WholeHand])] }
            : o with { Fine = FineHandling.Much }),
        ArticleTraitKind.ReleaseWithoutGrip => WithStep(aid, OperationKind.Release, o => Pressed(o, has)),
        ArticleTraitKind.WashWithoutGrip => WithStep(aid, OperationKind.Clean, o => Pressed(o, has)),
        ArticleTraitKind.TakesAddOn => aid with { AddOns = has ? aid.AddOns.Add(Of!) : aid.AddOns.Remove(Of!) },
        ArticleTraitKind.FreeOf => aid with { Materials = has ? aid.Materials.Remove(Of!) : aid.Materials.Add(Of!) },
        _ => throw new InvalidOperationException($"{Kind} is a number"),
    };

    private static Operation Pressed(Operation step, bool has) => has
        ? step with { Grasps = [.. step.Grasps.Union([Grasp.PressWithPalmOrFist])], Act = HandAct.PressLever }
        : step with { Grasps = [Grasp.FinePinch, Grasp.WholeHand], Act = HandAct.Squeeze, AgainstTheBody = false };

    private static bool Presses(Operation step) => step.Grasps.Contains(Grasp.PressWithPalmOrFist) || step.Grasps.Contains(Grasp.PressWithForearm);

    private static Operation? Step(Aid aid, OperationKind kind) => aid.Operations.FirstOrDefault(o => o.Kind == kind);

    private static Sourced? Force(Aid aid, OperationKind kind) => Step(aid, kind) is { } step && step.Force.High > 0 ? step.Force : null;

    /// <summary>The first step of the kind counts, as where a stock file is measured.</summary>
    private static Aid WithStep(Aid aid, OperationKind kind, Func<Operation, Operation> change)
    {
        int at = aid.Operations.IndexOf(Step(aid, kind)!);
        return aid with { Operations = aid.Operations.SetItem(at, change(aid.Operations[at])) };
    }
}
