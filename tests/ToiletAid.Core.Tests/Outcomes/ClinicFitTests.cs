using CsCheck;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Outcomes;

public sealed class ClinicFitTests
{
    [Fact]
    public void A_kind_that_fails_twice_as_often_loses_value_and_the_others_hardly()
    {
        var fitted = Fit([.. Clinic.Of("tongs", 80, 32), .. Clinic.Of("long-clamp", 80, 16), .. Clinic.Of("own-hand", 80, 16)]);

        // 0.6 of 1 instead of 0.8 is a factor of 0.75.
        Assert.InRange(fitted.Of("tongs").Factor, 0.74, 0.85);
        Assert.True(fitted.Of("tongs").Range.High < 1);
        Assert.InRange(fitted.Of("long-clamp").Factor, 0.93, 1.02);
        Assert.InRange(fitted.Of("a-kind-never-tried").Factor, 0.9, 1);
    }

    [Fact]
    public void As_predicted_nothing_changes()
    {
        var fitted = Fit([.. Clinic.Of("tongs", 40, 8, cleaning: 0.8), .. Clinic.Of("long-clamp", 40, 8, cleaning: 0.8)]);

        Assert.All(fitted.Kinds, k => Assert.Equal(1, k.Factor, 0.01));
        Assert.All(fitted.Kinds.SelectMany(k => k.Shifts), s => Assert.Equal(0, s.By, 0.001));
    }

    [Fact]
    public void Three_people_change_little_and_three_hundred_much()
    {
        var rest = Clinic.Of("long-clamp", 60, 12).ToArray();
        double few = Fit([.. rest, .. Clinic.Of("tongs", 6, 3)]).Of("tongs").Factor, many = Fit([.. rest, .. Clinic.Of("tongs", 300, 150)]).Of("tongs").Factor;

        // Half fail instead of a fifth: 0.5 / 0.8 is 0.625.
        Assert.InRange(few, 0.8, 0.97);
        Assert.InRange(many, 0.62, 0.67);
    }

    [Fact]
    public void A_clinic_with_weak_hands_is_told_by_all_kinds_together()
    {
        var fitted = Fit([.. Clinic.Of("tongs", 30, 12), .. Clinic.Of("long-clamp", 30, 12), .. Clinic.Of("own-hand", 30, 12), .. Clinic.Of("bottle", 30, 12)]);

        Assert.InRange(fitted.Of("a-kind-never-tried").Factor, 0.75, 0.93);
    }

    [Fact]
    public void What_is_seen_of_a_criterion_moves_it()
    {
        var shift = Assert.Single(Fit([.. Clinic.Of("tongs", 200, 10, cleaning: 0.5), .. Clinic.Of("long-clamp", 200, 10, cleaning: 0.8)]).Of("tongs").Shifts);

        Assert.Equal(Criterion.Cleaning, shift.Criterion);
        Assert.Equal(190, shift.People);
        Assert.InRange(shift.By, -0.3, -0.25);
        Assert.Equal(0.5, shift.Seen, 1e-9);
    }

    [Fact]
    public void Too_few_people_give_no_coefficients()
    {
        Assert.Null(new ClinicFit(Cases.Knowledge.Evidence).Fit(Clinic.Tally(Clinic.Of("tongs", 59, 9)), "data"));
        Assert.NotNull(new ClinicFit(Cases.Knowledge.Evidence).Fit(Clinic.Tally(Clinic.Of("tongs", 60, 9)), "data"));
    }

    /// <summary>Whatever the numbers of people with each kind, no cell holds one to four.</summary>
    [Fact]
    public void No_cell_tells_of_fewer_than_five_people() =>
        Gen.Int[0, 30].Array[1, 7].Sample(counts =>
        {
            var tries = counts.SelectMany((count, kind) => Clinic.Of($"kind-{kind}", count, count / 2, cleaning: 0.6)).ToArray();
            var fitted = new ClinicFit(Cases.Knowledge.Evidence).Fit(Clinic.Tally(tries), "data");
            if (tries.Length < 60)
            {
                Assert.Null(fitted);
                return;
            }

            Assert.All(fitted!.Kinds, k => Assert.False(k.People is > 0 and < 5, $"{k.Aid} {k.People}"));
            Assert.All(fitted.Kinds.SelectMany(k => k.Shifts), s => Assert.False(s.People is > 0 and < 5, $"{s.Criterion} {s.People}"));
            Assert.Equal(tries.Length, fitted.Kinds.Sum(k => k.People));
            Assert.Null(fitted.Kinds[^1].Aid);
        }, iter: 500);

    [Fact]
    public void Values_are_shifted_then_multiplied_and_stay_between_0_and_1()
    {
        var clinic = new ClinicCoefficients
        {
            People = 20,
            Tries = 20,
            Data = "data",
            Kinds = [Kind("tongs", 0.5, new CriterionShift(Criterion.Cleaning, 9, 0.5, 0.7, 0.2, new(0.1, 0.3))), Kind(null, 1.2)],
        };
        double[] tongs = [1, 0.9, 0.6, 0.9, 0.8, 0.4, 0.2, 0], other = [1, 0.9, 0.5, 0, 0, 0, 0, 0.1];
        clinic.Apply("tongs", tongs);
        clinic.Apply("bottle", other);

        double[] half = [0.5, 0.45, 0.4, 0.45, 0.4, 0.2, 0.1, 0], more = [1, 1, 0.6, 0, 0, 0, 0, 0.12];
        Assert.Equal(half, tongs.Select(v => Math.Round(v, 9)));
        Assert.Equal(more, other.Select(v => Math.Round(v, 9)));
    }

    private static KindCoefficients Kind(string? aid, double factor, params CriterionShift[] shifts) =>
        new() { Aid = aid, People = 10, Failed = 1, Expected = 1, Factor = factor, Range = new(factor, factor), Shifts = [.. shifts] };

    private static ClinicCoefficients Fit(IEnumerable<FirstTry> tries) => new ClinicFit(Cases.Knowledge.Evidence).Fit(Clinic.Tally(tries), "data")!;
}
