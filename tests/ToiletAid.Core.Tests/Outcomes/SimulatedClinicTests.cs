using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Outcomes;

/// <summary>Clinics whose truth is known, because it was drawn: is it found out, and does what was learnt predict better?</summary>
[Trait("Speed", "Slow")]
public sealed class SimulatedClinicTests(ITestOutputHelper output)
{
    private const int Clinics = 1000;
    private const int Kinds = 8;

    private static readonly ClinicFit Fitting = new(Cases.Knowledge.Evidence);

    /// <summary>Truths drawn as the evidence says that they lie: an interval that should hold in 80 of 100 cases does.</summary>
    [Fact]
    public void Intervals_hold_the_truth_as_often_as_they_say()
    {
        var evidence = Cases.Knowledge.Evidence;
        double common = evidence.Value(EvidenceIds.ClinicCommonLogOdds);
        var between = evidence[EvidenceIds.ClinicKindsLogOdds];
        int held = 0, all = 0;
        for (int clinic = 0; clinic < Clinics; clinic++)
        {
            var random = new RandomDraws(11, (ulong)clinic);
            double spread = (clinic % 4) switch { 0 => between.Low, 1 => between.High, _ => between.Value };
            double shared = random.NextNormal() * common;
            double[] truth = [.. Draw(ref random, Kinds).Select(d => shared + (d * spread))];
            var tries = Tries(ref random, 120, truth);
            var fitted = Fitting.Fit(Clinic.Tally(tries), "data")!;
            foreach (var kind in fitted.Kinds.Where(k => k.Aid is not null))
            {
                int number = int.Parse(kind.Aid!["kind-".Length..], CultureInfo.InvariantCulture);
                double[] predicted = [.. tries.Where(t => t.Aid == kind.Aid).Select(t => t.Works)];
                double factor = Math.Clamp(predicted.Sum(p => Here(p, truth[number])) / predicted.Sum(), 0.25, 1.25);
                held += factor >= kind.Range.Low - 1e-4 && factor <= kind.Range.High + 1e-4 ? 1 : 0;
                all++;
            }
        }

        output.WriteLine($"{held} of {all} intervals hold the truth, {100.0 * held / all:0.0} of 100");
        Assert.InRange((double)held / all, 0.77, 0.83);
    }

    /// <summary>Loss is the logarithmic score of a new try, per try; the built-in values are those with which it starts.</summary>
    [Theory]
    [InlineData(60)]
    [InlineData(200)]
    [InlineData(600)]
    public void What_was_learnt_predicts_no_worse_than_the_built_in_values_on_average(int people)
    {
        double builtIn = 0, learnt = 0, whenRight = 0;
        int worse = 0;
        for (int clinic = 0; clinic < Clinics; clinic++)
        {
            var random = new RandomDraws(12, (ulong)clinic);
            double shared = random.NextNormal() * 0.4;
            double[] truth = [.. Draw(ref random, Kinds).Select(d => shared + (d * 0.6))];
            var (before, after) = Losses(ref random, people, truth);
            (builtIn, learnt, worse) = (builtIn + before, learnt + after, worse + (after > before ? 1 : 0));
            var (right, moved) = Losses(ref random, people, new double[Kinds]);
            whenRight += moved - right;
        }

        output.WriteLine($"{people} people: loss {builtIn / Clinics:0.0000} built in, {learnt / Clinics:0.0000} learnt; worse in {worse} of {Clinics} clinics; added where the built-in values are right {whenRight / Clinics:0.0000}");
        Assert.True(learnt < builtIn);
    }

    /// <summary>One kind of eight fails with two of five people where one of five was predicted, the others as predicted.</summary>
    [Fact]
    public void A_kind_that_fails_twice_as_often_is_found_out()
    {
        double[] truth = new double[Kinds];
        truth[0] = Math.Log(0.4 / 0.6) - Math.Log(0.2 / 0.8);
        int[] found = Found(truth, k => k == "kind-0");
        int wrongly = 0;
        for (int clinic = 0; clinic < Clinics; clinic++)
        {
            var random = new RandomDraws(14, (ulong)clinic);
            var fitted = Fitting.Fit(Clinic.Tally(Tries(ref random, 8 * 40, truth, 0.8)), "data")!;
            wrongly += fitted.Kinds.Count(k => k.Aid is not null && k.Aid != "kind-0" && k.Range.High < 1);
        }

        output.WriteLine($"tries with that kind until its whole interval lies below 1: half of the clinics {found[Clinics / 2]}, nine of ten {found[Clinics * 9 / 10]}; at 40 tries each {100.0 * wrongly / Clinics / 7:0.0} of 100 other kinds wrongly");
        Assert.InRange(found[Clinics / 2], 5, 40);
        Assert.InRange(found[Clinics * 9 / 10], 10, 120);
    }

    /// <summary>Hands weaker than the norms: every kind fails half as often again, 30 of 100 where 20 were predicted.</summary>
    [Fact]
    public void Weaker_hands_are_found_out_by_all_kinds_together()
    {
        double[] truth = [.. Enumerable.Repeat(Math.Log(0.3 / 0.7) - Math.Log(0.2 / 0.8), Kinds)];
        int[] found = Found(truth, k => k is null);

        output.WriteLine($"tries with each of {Kinds} kinds until a kind that was not tried is believed to do worse: half of the clinics {found[Clinics / 2]}, nine of ten {found[Clinics * 9 / 10]}");
        Assert.InRange(found[Clinics / 2], 1, 120);
    }

    /// <summary>Tries with each kind until the kind is found out, by clinic, fewest first.</summary>
    private static int[] Found(double[] truth, Func<string?, bool> which)
    {
        const int Most = 200, Step = 5;
        int[] found = [.. Enumerable.Range(0, Clinics).Select(clinic =>
        {
            var random = new RandomDraws(13, (ulong)clinic);
            var tally = new OutcomeTally(Cases.Knowledge);
            for (int each = Step; each <= Most; each += Step)
            {
                foreach (var tried in Tries(ref random, Kinds * Step, truth, 0.8))
                {
                    tally.Add(Clinic.Person(tried));
                }

                if (Fitting.Fit(tally, "data") is { } fitted && fitted.Kinds.Single(k => which(k.Aid)).Range.High < 1)
                {
                    return each;
                }
            }

            return Most + Step;
        }).Order()];
        return found;
    }

    private static (double BuiltIn, double Learnt) Losses(ref RandomDraws random, int people, double[] truth)
    {
        var fitted = Fitting.Fit(Clinic.Tally(Tries(ref random, people, truth)), "data")!;
        double builtIn = 0, learnt = 0;
        const int New = 400;
        foreach (var tried in Tries(ref random, New, truth))
        {
            double p = tried.Works, q = Math.Clamp(p * fitted.Of(tried.Aid).Factor, 0.02, 0.98);
            builtIn -= Math.Log(tried.Failed ? 1 - p : p);
            learnt -= Math.Log(tried.Failed ? 1 - q : q);
        }

        return (builtIn / New, learnt / New);
    }

    private static ImmutableArray<FirstTry> Tries(ref RandomDraws random, int people, double[] truth, double? works = null)
    {
        var tries = ImmutableArray.CreateBuilder<FirstTry>(people);
        for (int i = 0; i < people; i++)
        {
            int kind = i % truth.Length;
            double p = works ?? (0.5 + (0.48 * random.NextUniform()));
            tries.Add(Clinic.Try($"kind-{kind}", p, random.NextUniform() >= Here(p, truth[kind])));
        }

        return tries.MoveToImmutable();
    }

    /// <summary>Share with whom it works here, where the log odds of failing lie a shift higher than predicted.</summary>
    private static double Here(double works, double shift) => 1 / (1 + Math.Exp(Math.Log((1 - works) / works) + shift));

    private static double[] Draw(ref RandomDraws random, int count)
    {
        double[] draws = new double[count];
        for (int i = 0; i < count; i++)
        {
            draws[i] = random.NextNormal();
        }

        return draws;
    }
}
