using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

/// <summary>Bodies against the surveys.</summary>
/// <remarks>Means and percentiles typed in from the summary of ANSUR II: Gordon et al. 2014, NATICK/TR-15/007, computed from the public
/// file, 1,986 women and 4,082 men; mm.</remarks>
public sealed class BodyModelTests
{
    [Theory]
    [InlineData(BodyMeasure.ShoulderHeightSitting, 563.2, 602.8)]
    [InlineData(BodyMeasure.UpperArm, 311.2, 335.2)]
    [InlineData(BodyMeasure.ForearmToGrip, 317.7, 349.0)]
    [InlineData(BodyMeasure.ShoulderBreadth, 365.3, 415.7)]
    [InlineData(BodyMeasure.HipBreadth, 399.0, 379.3)]
    [InlineData(BodyMeasure.ButtockDepth, 232.9, 245.8)]
    [InlineData(BodyMeasure.AbdomenDepth, 229.7, 254.7)]
    [InlineData(BodyMeasure.ThighThickness, 167.9, 180.5)]
    [InlineData(BodyMeasure.HandBreadth, 78.2, 88.3)]
    [InlineData(BodyMeasure.ThighLength, 485.1, 502.9)]
    public void People_of_mean_stature_and_mass_have_the_mean_of_every_measure(BodyMeasure measure, double femaleMm, double maleMm)
    {
        (double female, _) = ReachPeople.Tables.Estimate(measure, Sex.Female, 1.6285, 67.8);
        (double male, _) = ReachPeople.Tables.Estimate(measure, Sex.Male, 1.7562, 85.5);
        Assert.Equal(femaleMm, female * 1000, 0.3);
        Assert.Equal(maleMm, male * 1000, 0.3);
    }

    // measure, sex, 5th, 50th and 95th percentile, mm (kg for mass); tolerance 2 % of the 50th, as the tails are not quite normal.
    [Theory]
    [InlineData(BodyMeasure.Stature, Sex.Female, 1525, 1626, 1740)]
    [InlineData(BodyMeasure.Stature, Sex.Male, 1648, 1755, 1870)]
    [InlineData(BodyMeasure.ShoulderHeightSitting, Sex.Female, 515, 564, 609)]
    [InlineData(BodyMeasure.ShoulderHeightSitting, Sex.Male, 552, 603, 653)]
    [InlineData(BodyMeasure.UpperArm, Sex.Female, 283, 311, 340)]
    [InlineData(BodyMeasure.UpperArm, Sex.Male, 307, 335, 365)]
    [InlineData(BodyMeasure.ForearmToGrip, Sex.Female, 290, 316, 350)]
    [InlineData(BodyMeasure.ForearmToGrip, Sex.Male, 320, 348.5, 379)]
    [InlineData(BodyMeasure.ShoulderBreadth, Sex.Female, 335, 365, 396)]
    [InlineData(BodyMeasure.ShoulderBreadth, Sex.Male, 384, 415, 447)]
    [InlineData(BodyMeasure.HipBreadth, Sex.Female, 348, 397, 456)]
    [InlineData(BodyMeasure.HipBreadth, Sex.Male, 333, 378, 431)]
    [InlineData(BodyMeasure.ButtockDepth, Sex.Female, 196, 231, 277)]
    [InlineData(BodyMeasure.ButtockDepth, Sex.Male, 204, 246, 291)]
    [InlineData(BodyMeasure.AbdomenDepth, Sex.Female, 184, 227, 285)]
    [InlineData(BodyMeasure.AbdomenDepth, Sex.Male, 200, 251, 320)]
    public void Draws_of_an_unknown_person_have_the_percentiles_of_the_survey(BodyMeasure measure, Sex sex, double p5, double p50, double p95)
    {
        const int Count = 2000;
        var hypercube = new LatinHypercubeDraws(Count, 7);
        double[] values = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            values[i] = 1000 * Drawn(measure, sex, hypercube, i);
        }

        Array.Sort(values);
        double tolerance = measure is BodyMeasure.ButtockDepth or BodyMeasure.AbdomenDepth ? 0.04 * p50 : 0.02 * p50;
        Assert.Equal(p5, values[Count / 20], tolerance);
        Assert.Equal(p50, values[Count / 2], tolerance);
        Assert.Equal(p95, values[Count * 19 / 20], tolerance);
    }

    // Drillis and Contini 1966, in Winter 2009, Fig. 4.1: shares of stature; known to run short on arms and wide at the shoulders
    // against ANSUR II (upper arm 2.6 %, shoulders 9 to 15 %).
    [Theory]
    [InlineData(Sex.Female, 1.6285)]
    [InlineData(Sex.Male, 1.7562)]
    public void The_handbook_ratios_are_met_within_their_known_bias(Sex sex, double stature)
    {
        (double upper, _) = ReachPeople.Tables.Estimate(BodyMeasure.UpperArm, sex, stature, 75);
        (double shoulders, _) = ReachPeople.Tables.Estimate(BodyMeasure.ShoulderBreadth, sex, stature, sex == Sex.Male ? 85.5 : 67.8);
        (double shoulderHeight, _) = ReachPeople.Tables.Estimate(BodyMeasure.ShoulderHeightSitting, sex, stature, 75);
        Assert.InRange(upper / (0.186 * stature), 1.02, 1.035);
        Assert.InRange(0.259 * stature / shoulders, 1.09, 1.16);
        Assert.InRange(shoulderHeight / ((0.818 - 1 + 0.520) * stature), 1.0, 1.03);
    }

    // NHANES 2009-2010, upper arm for stature: women .2192 at 20-59, .2259 at 75 and over; men .2205 and .2253.
    [Theory]
    [InlineData(Sex.Female, 0.2259 / 0.2192)]
    [InlineData(Sex.Male, 0.2253 / 0.2205)]
    public void Old_people_keep_their_arms_when_their_stature_shrinks(Sex sex, double ratio)
    {
        double[] zeros = new double[BodyModel.Deviates];
        var young = new ReachPerson { Sex = sex, AgeYears = 40, Stature = new ReachInput(1.6), Mass = new ReachInput(70) };
        Body at40 = BodyModel.Make(ReachPeople.Tables, young, zeros);
        Body at80 = BodyModel.Make(ReachPeople.Tables, young with { AgeYears = 80 }, zeros);
        double drop = ReachPeople.Numbers.Body.ShoulderJointBelowAcromion * 1.6;
        Assert.Equal(ratio, (at80.UpperArm + drop) / (at40.UpperArm + drop), 5e-4);
    }

    [Fact]
    public void Measured_lengths_replace_the_estimate()
    {
        double[] zeros = new double[BodyModel.Deviates];
        ReachPerson person = ReachPeople.Reference with
        {
            Lengths = ReachPeople.Reference.Lengths.Add(BodyMeasure.ButtockDepth, new ReachInput(0.31)),
        };
        Assert.Equal(0.155, BodyModel.Make(ReachPeople.Tables, person, zeros).PelvisForward, 1e-12);
    }

    [Fact]
    public void Outside_the_survey_it_is_said_and_the_spread_is_widened()
    {
        var settings = new ReachSettings { Draws = 0, Postures = [Posture.Seated], Approaches = [Approach.Behind] };
        ReachPerson heavy = ReachPeople.Reference with { Mass = new ReachInput(190) };
        Assert.True(ReachAnalysis.Analyse(ReachPeople.Tables, heavy, settings).OutsideSurvey);
        Assert.False(ReachAnalysis.Analyse(ReachPeople.Tables, ReachPeople.Reference, settings).OutsideSurvey);

        double[] deviates = new double[BodyModel.Deviates];
        deviates[(int)BodyMeasure.ButtockDepth] = 1;
        double[] zeros = new double[BodyModel.Deviates];
        double within = BodyModel.Make(ReachPeople.Tables, ReachPeople.Reference, deviates).PelvisForward
            - BodyModel.Make(ReachPeople.Tables, ReachPeople.Reference, zeros).PelvisForward;
        double outside = BodyModel.Make(ReachPeople.Tables, heavy, deviates).PelvisForward
            - BodyModel.Make(ReachPeople.Tables, heavy, zeros).PelvisForward;
        Assert.Equal(ReachPeople.Numbers.Body.SurveyWidening, outside / within, 1e-9);
    }

    // A measured arm is as long as the tape says, at any age; only an estimated one is less certain in older people.
    [Fact]
    public void A_measured_arm_is_as_certain_in_older_people_as_in_younger()
    {
        ReachPerson young = ReachPeople.Reference with
        {
            Lengths = ReachPeople.Reference.Lengths.Add(BodyMeasure.UpperArm, new ReachInput(0.33)).Add(BodyMeasure.ForearmToGrip, new ReachInput(0.34)),
        };
        var hypercube = new LatinHypercubeDraws(16, 3);
        for (int i = 0; i < 16; i++)
        {
            Body at40 = new PersonModel(ReachPeople.Tables, young).Draw(hypercube, i).Body, at80 = new PersonModel(ReachPeople.Tables, young with { AgeYears = 80 }).Draw(hypercube, i).Body;
            Assert.Equal(at40.UpperArm, at80.UpperArm);
            Assert.Equal(at40.Forearm, at80.Forearm);
        }
    }

    // Far outside the survey the straight lines fall below nothing: the abdomen of a very tall and very light person, the mass of a very small one.
    [Theory]
    [InlineData(Sex.Female)]
    [InlineData(Sex.Male)]
    [InlineData(Sex.Unstated)]
    public void No_body_is_thinner_or_lighter_than_what_is_taken_as_measured(Sex sex)
    {
        double[] zeros = new double[BodyModel.Deviates];
        var tall = new ReachPerson { Sex = sex, Stature = new ReachInput(2.4), Mass = new ReachInput(25) };
        Body thin = BodyModel.Make(ReachPeople.Tables, tall, zeros);
        Assert.InRange((2 * thin.TrunkForward) + thin.AbdomenGive, 0.02 - 1e-12, 0.1);
        var small = new ReachPerson { Sex = sex, Stature = new ReachInput(1.05) };
        Assert.InRange(BodyModel.Make(ReachPeople.Tables, small, zeros).Mass, 25, 30);
    }

    private static double Drawn(BodyMeasure measure, Sex sex, LatinHypercubeDraws hypercube, int draw)
    {
        double stature = Value(BodyMeasure.Stature, 0, 0);
        double mass = Value(BodyMeasure.Mass, stature, 0);
        return Value(measure, stature, mass);

        double Value(BodyMeasure of, double s, double m)
        {
            (double mean, double spread) = ReachPeople.Tables.Estimate(of, sex, s, m);
            return mean + (spread * hypercube.Normal((int)of, draw));
        }
    }
}
