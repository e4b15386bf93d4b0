using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Outcomes;

public sealed class PredictionTests
{
    private static readonly ClinicCoefficients Bad = new()
    {
        People = 50,
        Tries = 50,
        Data = "data",
        Kinds = [new() { Aid = null, People = 50, Failed = 25, Expected = 10, Factor = 0.5, Range = new(0.4, 0.6), Shifts = [] }],
    };

    [Fact]
    public void What_is_predicted_is_what_the_shortlist_says()
    {
        var advisor = new Advisor(Cases.Knowledge, new());
        var known = Cases.Able;

        Assert.All(advisor.Advise(known).Ranked, plan =>
        {
            if (plan.Unsettled.IsEmpty)
            {
                Assert.Equal(plan.Criteria.Select(c => Math.Round(c, 4)), advisor.Predict(known, plan.Plan).Criteria);
            }
        });
    }

    [Fact]
    public void A_clinic_lowers_what_is_advised_and_not_what_the_built_in_values_predict()
    {
        var known = Cases.Able;
        var builtIn = new Advisor(Cases.Knowledge, new());
        var clinic = new Advisor(Cases.Knowledge with { Clinic = Bad }, new());
        var plan = builtIn.Advise(known).Ranked[0];

        Assert.Equal(builtIn.Predict(known, plan.Plan).Criteria, clinic.Predict(known, plan.Plan).Criteria);
        var lowered = clinic.Advise(known).Ranked.Single(r => r.Plan.Key == plan.Plan.Key);
        Assert.Equal(plan.Criteria[(int)Criterion.Cleaning] / 2, lowered.Criteria[(int)Criterion.Cleaning], 1e-9);
        Assert.Equal(plan.UsableShare / 2, lowered.UsableShare, 1e-9);
    }

    [Fact]
    public void What_a_clinic_learnt_of_the_hand_alone_decides_too()
    {
        var known = Cases.Able;
        var first = new QuestionPlanner(Cases.Knowledge).OutlookFor(Depth.Quick, known, judgeEarly: true).First!;
        var hard = Bad.Kinds[0] with { Aid = first.Id, Factor = 1, Shifts = [new(Criterion.Handling, 20, 0.9, 0, -1, new(-1, -1))] };
        var clinic = Bad with { Kinds = [hard, Bad.Kinds[0] with { Factor = 1 }] };

        Assert.NotEqual(first.Id, new QuestionPlanner(Cases.Knowledge with { Clinic = clinic }).OutlookFor(Depth.Quick, known, judgeEarly: true).First!.Id);
    }

    [Fact]
    public void What_a_clinic_learnt_decides_what_is_asked_for_as_well()
    {
        var known = Cases.Able;
        var first = new QuestionPlanner(Cases.Knowledge).OutlookFor(Depth.Quick, known, judgeEarly: true).First!;
        var fails = Bad with { Kinds = [.. Bad.Kinds.Select(k => k with { Aid = first.Id }), Bad.Kinds[0] with { Factor = 1 }] };

        Assert.NotEqual(first.Id, new QuestionPlanner(Cases.Knowledge with { Clinic = fails }).OutlookFor(Depth.Quick, known, judgeEarly: true).First!.Id);
    }
}
