using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Makes the body of one plausible person from what is known and from standard normal deviates for what is not.</summary>
internal static class BodyModel
{
    /// <summary>Number of deviates that a body takes: one for each body measure.</summary>
    public const int Deviates = 12;

    /// <summary>Makes a body.</summary>
    /// <param name="tables">Estimates and numbers.</param>
    /// <param name="person">What is known.</param>
    /// <param name="deviates">Standard normal deviates by body measure; zeros give the middle person.</param>
    public static Body Make(BodyTables tables, ReachPerson person, ReadOnlySpan<double> deviates)
    {
        double stature = Known(tables, person, BodyMeasure.Stature, person.Stature, 0, 0, 1, deviates);
        double mass = Known(tables, person, BodyMeasure.Mass, person.Mass, stature, 0, 1, deviates);
        double widen = IsOutsideSurvey(tables, person.Sex, stature, mass) ? tables.Model["survey.widening"] : 1;

        double Length(BodyMeasure measure, ReadOnlySpan<double> z) => Known(
            tables,
            person,
            measure,
            person.Lengths.TryGetValue(measure, out ReachInput given) ? given : null,
            stature,
            mass,
            widen,
            z);

        ReachNumbers numbers = tables.Model;
        double arms = ArmFactor(tables, person);
        Body body = default;
        body.Stature = stature;
        body.Mass = mass;
        double drop = numbers["ratio.shoulder-joint-below-acromion"] * stature;
        double hip = numbers["ratio.hip-joint-above-seat"] * stature;
        body.ShoulderUp = Length(BodyMeasure.ShoulderHeightSitting, deviates) - drop - hip;
        body.ShoulderOut = Length(BodyMeasure.ShoulderBreadth, deviates) / 2;
        double upper = Length(BodyMeasure.UpperArm, deviates) * (person.Lengths.ContainsKey(BodyMeasure.UpperArm) ? 1 : arms);
        double fore = Length(BodyMeasure.ForearmToGrip, deviates) * (person.Lengths.ContainsKey(BodyMeasure.ForearmToGrip) ? 1 : arms);
        body.UpperArm = upper - drop;
        body.Forearm = fore - (numbers["ratio.elbow-joint-before-olecranon"] * stature);
        body.HandBeyond = numbers["ratio.hand-beyond-grip"] * stature;
        body.HandRadius = numbers["ratio.hand-radius-of-breadth"] * Length(BodyMeasure.HandBreadth, deviates);
        body.AidRadius = numbers["ratio.aid-radius-of-hand"] * body.HandRadius;
        double abdomen = Length(BodyMeasure.AbdomenDepth, deviates);
        double buttock = Length(BodyMeasure.ButtockDepth, deviates);
        double hips = Length(BodyMeasure.HipBreadth, deviates);
        double thigh = Length(BodyMeasure.ThighThickness, deviates);
        body.ThighLength = Length(BodyMeasure.ThighLength, deviates);
        Fill(ref body, numbers, hip, abdomen, buttock, hips, thigh);
        return body;
    }

    /// <summary>True when stature or mass lies outside the people measured in the survey.</summary>
    public static bool IsOutsideSurvey(BodyTables tables, Sex sex, double stature, double mass)
    {
        ReachNumbers n = tables.Model;
        string low = sex == Sex.Male ? "male" : "female", high = sex == Sex.Female ? "female" : "male";
        return mass < n[$"survey.{low}.mass-least"] || mass > n[$"survey.{high}.mass-greatest"]
            || stature < n[$"survey.{low}.stature-least"] || stature > n[$"survey.{high}.stature-greatest"];
    }

    private static void Fill(ref Body body, ReachNumbers numbers, double hip, double abdomen, double buttock, double hips, double thigh)
    {
        body.ForearmRadius = numbers["ratio.forearm-radius"] * body.Stature;
        body.PelvisForward = buttock / 2;
        body.PelvisSideways = hips / 2;
        body.PelvisUp = hip + (numbers["ratio.flesh-below-seat"] * body.Stature);
        body.TrunkForward = abdomen / 2;
        body.TrunkSideways = numbers["ratio.trunk-of-hip-breadth"] * hips / 2;
        body.TrunkCentre = (abdomen - buttock) / 2;
        body.WaistUp = numbers["ratio.waist-above-hip"] * body.Stature;
        body.ThighRadius = thigh / 2;
        body.ThighOut = hips / 4;
        body.SeatUp = -hip;
        body.OpeningHalfWidth = numbers["seat.opening-width"] / 2;
        body.OpeningBack = numbers["seat.opening-behind-hip"];
        body.OpeningFront = numbers["seat.opening-before-hip"];
        body.OpeningDepth = numbers["seat.hand-below-seat"];
        body.SeatRise = numbers["seat.rise-when-leaning"];
        body.HandleBend = numbers["aid.bend-radius"];
        body.TissueGive = numbers["aid.tissue-give"];
        body.LongestWay = numbers["aid.longest-that-can-be-steered"];
        body.FleshDepth = numbers["solver.flesh-depth"];
        body.Stiffness = numbers["solver.stiffness"] / body.Stature;
        body.Invert();
    }

    private static double Known(
        BodyTables tables,
        ReachPerson person,
        BodyMeasure measure,
        ReachInput? given,
        double stature,
        double mass,
        double widen,
        ReadOnlySpan<double> deviates)
    {
        double z = deviates[(int)measure];
        if (given is { } known)
        {
            string kind = measure == BodyMeasure.Mass ? "mass" : "length";
            return Math.Max(known.Value + (z * tables.Model[$"error.{kind}.{ReachNumbers.Word(known.How)}"]), known.Value / 2);
        }

        (double mean, double spread) = tables.Estimate(measure, person.Sex, stature, mass);
        return Math.Max(mean + (widen * spread * z), mean / 2);
    }

    /// <summary>Arms stay as long while stature shrinks with age.</summary>
    private static double ArmFactor(BodyTables tables, ReachPerson person)
    {
        string? band = person.AgeYears switch
        {
            null or < 60 => null,
            < 75 => "60-to-74",
            _ => "75-and-over",
        };
        if (band is null)
        {
            return 1;
        }

        double female = tables.Model[$"arm-for-stature.female.{band}"], male = tables.Model[$"arm-for-stature.male.{band}"];
        return person.Sex switch
        {
            Sex.Female => female,
            Sex.Male => male,
            _ => (female + male) / 2,
        };
    }
}
