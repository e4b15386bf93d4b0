using System.Collections.Immutable;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>What stands behind the brief result, one level at a time, in the sentences of <see cref="AdviceText"/>.</summary>
/// <param name="knowledge">Questions and rules.</param>
public sealed class LevelText(KnowledgeBase knowledge)
{
    /// <summary>Title of the level that takes a search, and so is worked out only when it is asked for.</summary>
    public const string WhatWouldChange = "What would change it";

    /// <summary>Title of the level of questions that are open.</summary>
    public const string StillToAsk = "Still to ask";

    private readonly AdviceText _text = new(knowledge);

    /// <summary>The levels in the order in which they are offered; none where a red flag stops everything. A level without a line is left out.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="known">The answers it rests on.</param>
    /// <param name="top">How many plans to give.</param>
    public ImmutableArray<ResultLevel> Of(Advice advice, Answers known, int top)
    {
        ArgumentNullException.ThrowIfNull(advice);
        ArgumentNullException.ThrowIfNull(known);
        if (!advice.Stops.IsEmpty)
        {
            return [];
        }

        var first = advice.Ranked.FirstOrDefault();
        ResultLevel[] levels =
        [
            new("Reasons", first is null ? [] : [.. _text.ReasonsOf(advice, first)]),
            first is null ? new("What to arrange", [.. NeedText.Arrange(advice)]) : new("Set-up", [.. new SetupText(first, known, knowledge).Lines()]),
            new("Cautions", [.. AdviceText.CautionsOf(advice, first), AdviceText.Limits]),
            new("The others", [.. _text.Others(advice, known, top)]),
            new("Ruled out", [.. RuledOutText.Groups(advice)]),
            new(StillToAsk, [.. first is null ? [] : _text.StillToAsk(first, known), .. AdviceText.Conflicts(advice, knowledge)]),
        ];
        return [.. levels.Where(l => !l.Lines.IsEmpty)];
    }
}
