using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Plans;

/// <summary>A person as they may be, but for the strength of the hand: rankings with another grip look at the same.</summary>
/// <param name="filled">Answers, none unknown.</param>
/// <param name="numbers">Numbers of aids, hands and other evidence that plans are valued by for them.</param>
/// <param name="draw">Number of the reach draw, 0 or more; null for the middle case, in which reach is a probability.</param>
/// <param name="among">The persons that it is one of, who keep what was worked out of plans; null for one alone.</param>
internal sealed class DrawnCase(Answers filled, NumberSet numbers, int? draw, DrawnPeople? among = null)
{
    /// <summary>Answers, none unknown; whether the grip is among them does not matter to what is kept here.</summary>
    internal Answers Filled { get; } = filled;

    /// <summary>The person as the criteria see them.</summary>
    internal PersonView View { get; } = new(numbers.Evidence, filled);

    /// <summary>The hand, with the grip where that is among the answers.</summary>
    internal HandFacts Facts => field ??= AnswerMapping.Hand(Filled);

    /// <summary>Numbers of aids, hands and other evidence that plans are valued by for them.</summary>
    internal NumberSet Numbers { get; } = numbers;

    /// <summary>Number of the reach draw, 0 or more; null for the middle case, in which reach is a probability.</summary>
    internal int? Draw { get; } = draw;

    /// <summary>The persons that it is one of, who keep what was worked out of plans; null for one alone.</summary>
    internal DrawnPeople? Among { get; } = among;

    /// <summary>Values of what is used in plans on all criteria but handling and reach; of the middle case, in which there are many plans with the same.</summary>
    internal Dictionary<Tools, double[]> OthersOfTools => field ??= [];
}
