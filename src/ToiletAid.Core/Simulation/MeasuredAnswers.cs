using System.Collections.Immutable;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Simulation;

/// <summary>Numbers of simulated people: age, build and strength from the tables, the rest as the model says; always within what the question takes.</summary>
internal sealed class MeasuredAnswers(KnowledgeBase knowledge, PeopleModel model)
{
    private static readonly ImmutableArray<string> OfTheTrunk = ["trunk-flexion", "side-bend", "trunk-rotation"];

    private readonly double[] _ageZ = [.. model.AgeShares.Select(StandardNormal.Quantile)];

    /// <summary>A number for the question, or null where none is given.</summary>
    internal AnswerValue? Of(Question question, Answers answers, Traits traits, ref RandomDraws draws) => question.Id.Text switch
    {
        "age" => Number(question.Number!, Years(traits), 1),
        "stature" => Number(question.Number!, Stature(answers, draws.NextNormal()) * 100, 1),
        "mass" => Number(question.Number!, Mass(answers, draws.NextNormal()), 1),
        "grip" => Force(question.Number!, knowledge.Hand.Norms.Grip.For(Years(traits), Sex(answers)).Curve, traits, ref draws),
        "pinch" => Force(question.Number!, knowledge.Hand.Norms.Pinch(Years(traits), Sex(answers)).Curve, traits, ref draws),
        "cleans" => Number(question.Number!, model.CleansMedian * Math.Exp(model.CleansLogSpread * draws.NextNormal()), 0.1),
        "budget" => draws.NextUniform() < model.BudgetKnownShare
            ? Number(question.Number!, model.BudgetMedian * Math.Exp(model.BudgetLogSpread * draws.NextNormal()), 10)
            : null,
        "joints" => Joints(question, traits, ref draws),
        _ => null,
    };

    /// <summary>The same answer in the coarse steps in which people are told apart while questions are chosen; other answers as they are.</summary>
    internal AnswerValue Rounded(Question question, AnswerValue value)
    {
        if (value is not AnswerValue.Number number || !model.AskingSteps.TryGetValue(question.Id.Text, out double step))
        {
            return value;
        }

        double rounded = Math.Max(1, Math.Round(number.Amount / step, MidpointRounding.ToEven)) * step;
        return number with { Amount = Math.Clamp(rounded, question.Number!.Low, question.Number.High) };
    }

    /// <summary>How likely somebody with these traits has a number, up to a factor that is the same for all traits.</summary>
    internal double Likelihood(Question question, AnswerValue value, Answers answers, Traits traits)
    {
        switch (question.Id.Text, value)
        {
            case ("age", AnswerValue.Number):
                double off = (Years(traits) - answers.Si(QuestionIds.Age)!.Value) / model.AgeKernel;
                return Math.Exp(-0.5 * off * off);
            case ("grip", AnswerValue.Number):
                return Weakness(knowledge.Hand.Norms.Grip.For(Years(traits), Sex(answers)).Curve, answers.Si(QuestionIds.Grip)!.Value, traits);
            case ("pinch", AnswerValue.Number):
                return Weakness(knowledge.Hand.Norms.Pinch(Years(traits), Sex(answers)).Curve, answers.Si(QuestionIds.Pinch)!.Value, traits);
            default:
                return 1;
        }
    }

    private static double Weakness(NormCurve norm, double newtons, Traits traits)
    {
        double off = (norm.ZScore(newtons) * Math.Sqrt(2)) + traits[Traits.Hand];
        return Math.Exp(-0.5 * off * off);
    }

    /// <summary>Age of the person, years: straight between the points of the model.</summary>
    internal double Years(Traits traits)
    {
        double z = traits[Traits.Age];
        int i = 0;
        while (i < _ageZ.Length - 2 && z > _ageZ[i + 1])
        {
            i++;
        }

        return model.AgeYears[i] + ((z - _ageZ[i]) / (_ageZ[i + 1] - _ageZ[i]) * (model.AgeYears[i + 1] - model.AgeYears[i]));
    }

    private static Sex Sex(Answers answers) => answers.Choice(QuestionIds.Sex) ?? Person.Sex.Unstated;

    private double Stature(Answers answers, double deviation)
    {
        var (mean, spread) = knowledge.Body.Estimate(BodyMeasure.Stature, Sex(answers), 0, 0);
        return mean + (spread * deviation);
    }

    /// <summary>Mass goes with stature as in the survey; where stature is not known, with the usual one.</summary>
    private double Mass(Answers answers, double deviation)
    {
        var sex = Sex(answers);
        double stature = answers.Si(QuestionIds.Stature) ?? knowledge.Body.Estimate(BodyMeasure.Stature, sex, 0, 0).Mean;
        var (mean, spread) = knowledge.Body.Estimate(BodyMeasure.Mass, sex, stature, 0);
        return mean + (spread * deviation);
    }

    /// <summary>Strength follows the trait of the hand and keeps as much chance of its own.</summary>
    private static AnswerValue.Number Force(NumberSpec spec, NormCurve norm, Traits traits, ref RandomDraws draws)
    {
        double deviation = (draws.NextNormal() - traits[Traits.Hand]) / Math.Sqrt(2);
        return Number(spec, Units.Find(spec.Units[0])!.FromSi(Math.Max(0, norm.AtZ(deviation))), 0.5);
    }

    /// <summary>Each joint keeps a share of the range that is usual at the age; the shoulder's trait stiffens it.</summary>
    private AnswerValue.Parts Joints(Question question, Traits traits, ref RandomDraws draws)
    {
        string age = Years(traits) < model.JointsOlderFrom ? "adult" : "older";
        var amounts = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (var part in question.Parts)
        {
            string joint = part.Id switch
            {
                "internal-rotation" or "external-rotation" => "shoulder-" + part.Id,
                "side-bend" => "trunk-side-bend",
                _ => part.Id,
            };
            double usual = Units.Find(part.Number.Units[0])!.FromSi(knowledge.Body.Numbers.Value($"joint.{joint}.{age}"));
            double trait = OfTheTrunk.Contains(part.Id) ? traits[Traits.Age] : traits[Traits.Shoulder];
            double stiffness = (trait + draws.NextNormal()) / Math.Sqrt(2);
            double kept = StandardNormal.Probability(model.JointLossMiddle - stiffness);
            amounts[part.Id] = Number(part.Number, usual * kept, 5).Amount;
        }

        return new(amounts.ToImmutable(), question.Parts[0].Number.Units[0]);
    }

    private static AnswerValue.Number Number(NumberSpec spec, double amount, double step)
    {
        double rounded = Math.Round(Math.Round(amount / step) * step, 1);
        return new(Math.Clamp(rounded, spec.Low, spec.High), spec.Units[0]);
    }
}
