using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Teaching;

/// <summary>What to practise first with a kind: the steps that ask most of the hand.</summary>
internal static class FirstPractice
{
    private const int Most = 2;

    /// <summary>The sentences.</summary>
    /// <param name="aid">The kind.</param>
    /// <param name="name">What it is called.</param>
    internal static IEnumerable<string> Of(Aid aid, string name)
    {
        if (aid.Operations.IsEmpty)
        {
            yield return $"With {name}, first agree what is done, in which order, and how to say stop.";
            yield break;
        }

        var hardest = aid.Operations.Where(o => o.Kind != OperationKind.Wash).OrderByDescending(o => o.Fine).ThenByDescending(o => o.Hands).ThenByDescending(o => o.Force.Value).ToList();
        Operation[] told = [hardest[0], .. hardest.Skip(1).OrderByDescending(o => o.Force.Value).Take(Most - 1)];
        foreach (var step in aid.Operations.Where(told.Contains))
        {
            yield return $"With {name}, first practise {KindFeatures.Doing(aid, step)}. {Spoken.Capital(Why(step))}.";
        }
    }

    private static string Why(Operation step) =>
        step.Hands == 2 ? $"it takes both hands and {KindFeatures.Fine(step.Fine)} fine finger work"
        : step.Fine != FineHandling.None ? $"it takes {KindFeatures.Fine(step.Fine)} fine finger work"
        : step.Force.Value > 0 ? $"it takes {KindFeatures.Force(step)}"
        : "it should come without thinking";
}
