using System.Globalization;
using ToiletAid.Core.Plans;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>How first places of interviews stand under all answers.</summary>
internal sealed class Tally
{
    private int _people;
    private int _none;
    private int _same;
    private int _topTwo;
    private int _ruledOut;
    private int _wrongPosture;
    private double _loss;

    internal double MeanLoss => _loss / _people;

    internal double Same => (double)_same / _people;

    internal void Add(SimulatedPerson person, Plan? first) => Add(person, first?.Aid.Id, first is not null && person.IsWrongPosture(first));

    internal void Add(SimulatedPerson person, string? kind, bool wrongPosture)
    {
        _people++;
        if (kind is null)
        {
            // Nothing was offered though something could be: all of its worth is lost.
            _none++;
            _loss += person.Advice.Ranked[0].Value;
            return;
        }

        _same += kind == person.First ? 1 : 0;
        _topTwo += person.Place(kind) <= 2 ? 1 : 0;
        _ruledOut += person.IsRuledOut(kind) ? 1 : 0;
        _wrongPosture += wrongPosture ? 1 : 0;
        _loss += person.Loss(kind);
    }

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"same {Share(_same)}, top two {Share(_topTwo)}, ruled out {Share(_ruledOut)}, nothing offered {Share(_none)}, posture not the person's {Share(_wrongPosture)}, mean loss {MeanLoss:F4}");

    private string Share(int count) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * count / _people:F1}");
}
