using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Core.Simulation;

/// <summary>What is true of a simulated person behind the answers: standard normal traits, more is graver, and a random stream for each question.</summary>
internal sealed class Traits
{
    internal const string Age = "age";
    internal const string Hand = "hand";
    internal const string Shoulder = "shoulder";

    /// <summary>The traits, in the order of their streams; a new one goes to the end, so that the others keep their numbers.</summary>
    internal static readonly string[] Names = [Age, Hand, Shoulder, "nerve", "tissue", "thinking"];

    /// <summary>Keeps these streams apart from those of the ranking, so that the people are not drawn with the numbers that judge them.</summary>
    private const ulong Tag = 0x5045_4F50_0000_0000;

    private const int StreamsPerPerson = 128;

    private readonly ulong _seed;
    private readonly ulong _first;
    private readonly double[] _traits = new double[Names.Length];

    internal Traits(ulong seed, long person)
    {
        _seed = seed;
        _first = Tag + ((ulong)person * StreamsPerPerson);
        var draws = new RandomDraws(seed, _first);
        for (int i = 0; i < _traits.Length; i++)
        {
            _traits[i] = draws.NextNormal();
        }
    }

    /// <summary>Somebody else with the same traits: what their questions draw is drawn anew.</summary>
    internal Traits(Traits like, long person)
    {
        _seed = like._seed;
        _first = Tag + ((ulong)person * StreamsPerPerson);
        _traits = like._traits;
    }

    /// <summary>The stream of a question, by its number in the list.</summary>
    internal RandomDraws Stream(int question) => new(_seed, _first + 1 + (ulong)question);

    /// <summary>The trait called <paramref name="name"/>.</summary>
    internal double this[string name] => _traits[Array.IndexOf(Names, name)];

    /// <summary>Where the person stands among all, 0 for the mildest and 1 for the gravest: the traits by their loads, and the rest by chance.</summary>
    internal double Place(AnswerModel? model, ref RandomDraws draws) => StandardNormal.Probability(Deviation(model, ref draws));

    /// <summary>The same as a standard normal deviation.</summary>
    internal double Deviation(AnswerModel? model, ref RandomDraws draws)
    {
        var (mean, spread) = Deviation(model);
        return mean + (spread * draws.NextNormal());
    }

    /// <summary>Mean and standard deviation of it, given the traits.</summary>
    internal (double Mean, double Spread) Deviation(AnswerModel? model)
    {
        double sum = 0, squares = 0;
        foreach (var (trait, load) in model?.Loads ?? ImmutableSortedDictionary<string, double>.Empty)
        {
            sum += load * this[trait];
            squares += load * load;
        }

        return (sum, Math.Sqrt(Math.Max(0, 1 - squares)));
    }
}
