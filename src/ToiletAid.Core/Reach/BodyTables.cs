using System.Collections.Frozen;
using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Everything about bodies, joints and postures that the reach model takes from data.</summary>
/// <remarks>Built once from the knowledge file; a missing entry fails here and not in the middle of a computation.</remarks>
public sealed class BodyTables
{
    private readonly FrozenDictionary<(BodyMeasure Measure, Sex Sex), BodyRegression> _regressions;

    /// <summary>Makes the tables.</summary>
    /// <param name="regressions">One for each measure and each of female and male.</param>
    /// <param name="numbers">Every other number by id, SI.</param>
    /// <exception cref="KeyNotFoundException">A regression or a number is missing.</exception>
    /// <exception cref="ArgumentException">A regression is given twice.</exception>
    public BodyTables(ImmutableArray<BodyRegression> regressions, NumberTable numbers)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        var byKey = new Dictionary<(BodyMeasure, Sex), BodyRegression>();
        foreach (BodyRegression regression in regressions)
        {
            byKey.Add((regression.Measure, regression.Sex), regression);
        }

        _regressions = byKey.ToFrozenDictionary();
        foreach (BodyMeasure measure in Enum.GetValues<BodyMeasure>())
        {
            _ = Regression(measure, Sex.Female);
            _ = Regression(measure, Sex.Male);
        }

        Regressions = regressions;
        Numbers = numbers;
        Model = new ReachNumbers(numbers);
    }

    /// <summary>Every regression.</summary>
    public ImmutableArray<BodyRegression> Regressions { get; }

    /// <summary>Every other number, with its origin.</summary>
    public NumberTable Numbers { get; }

    /// <summary>The numbers as the model uses them.</summary>
    internal ReachNumbers Model { get; }

    /// <summary>The estimate of one measure for female or male.</summary>
    /// <exception cref="KeyNotFoundException">No such regression.</exception>
    public BodyRegression Regression(BodyMeasure measure, Sex sex) =>
        _regressions.TryGetValue((measure, sex), out BodyRegression? found)
            ? found
            : throw new KeyNotFoundException($"no regression of {measure} for {sex}");

    /// <summary>Estimate and spread of one measure; for an unstated sex the average of both, with the difference in the spread.</summary>
    /// <param name="measure">What to estimate.</param>
    /// <param name="sex">Sex, or unstated.</param>
    /// <param name="stature">Stature, m.</param>
    /// <param name="mass">Body mass, kg.</param>
    /// <returns>Estimate and standard deviation, m (kg for mass).</returns>
    public (double Mean, double Spread) Estimate(BodyMeasure measure, Sex sex, double stature, double mass)
    {
        if (sex != Sex.Unstated)
        {
            BodyRegression one = Regression(measure, sex);
            return (one.At(stature, mass), one.Spread);
        }

        BodyRegression female = Regression(measure, Sex.Female);
        BodyRegression male = Regression(measure, Sex.Male);
        double f = female.At(stature, mass), m = male.At(stature, mass);
        double half = (m - f) / 2;
        double variance = ((female.Spread * female.Spread) + (male.Spread * male.Spread)) / 2;
        return ((f + m) / 2, Math.Sqrt(variance + (half * half)));
    }
}
